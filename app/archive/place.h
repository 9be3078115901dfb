/// Where an archive is: a file, or a shared database.
#pragma once

#include "app/archive/archive_error.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace afterbeat::archive {

/// A file (SQLite), or `service:NAME`: a PostgreSQL database that the user's own service file
/// describes.
struct ArchivePlace {
  bool shared = false;
  /// Path of the file, or name of the service.
  std::string name;

  /// As typed: a path, or `service:NAME`.
  [[nodiscard]] static Expected<ArchivePlace> from(std::string_view typed);
  /// As it would be typed.
  [[nodiscard]] std::string words() const;
  friend bool operator==(const ArchivePlace&, const ArchivePlace&) = default;
};

/// What of a service matters here. The rest (user, database, port) PostgreSQL's library reads by
/// itself, and the password from its own password file.
struct ServiceFacts {
  /// Empty: a socket of this machine.
  std::string host, sslMode;
};

/// The service in the text of a service file (PostgreSQL documentation, "The Connection Service
/// File"); an error where it is not in it.
[[nodiscard]] Expected<ServiceFacts> serviceIn(std::string_view fileText, const std::string& name);

/// The files that PostgreSQL's library looks into, in its order: PGSERVICEFILE or
/// ~/.pg_service.conf, then PGSYSCONFDIR/pg_service.conf.
[[nodiscard]] std::vector<std::filesystem::path> serviceFiles();

/// The options of a connection to the service. Off this machine the connection must be encrypted:
/// `sslmode` is at least `require`, and stays `verify-ca` or `verify-full` where the service asks
/// for it. A password in the service file is refused: it belongs in the password file.
[[nodiscard]] std::string connectOptions(const std::string& service, const ServiceFacts& facts);

} // namespace afterbeat::archive
