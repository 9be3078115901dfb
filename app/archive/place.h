/// Where an archive is: a file, or a shared database.
#pragma once

#include "app/archive/archive_error.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

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

/// Whether the file begins as those of SQLite do ("Database File Format", 1.3.1), which no
/// recording does. False where it cannot be read.
[[nodiscard]] bool isDatabaseFile(const std::filesystem::path& path);

/// What of a service matters here. The rest (user, database, port, and the password, from here or
/// from its own password file) PostgreSQL's library reads by itself.
struct ServiceFacts {
  /// Empty: the service does not say.
  std::string host, hostAddress, sslMode;
  bool password = false;
};

/// The service in the text of a service file (PostgreSQL documentation, "The Connection Service
/// File": of a key that stands twice the first counts); empty where it is not in it.
[[nodiscard]] std::optional<ServiceFacts> serviceIn(std::string_view fileText,
                                                    const std::string& name);

/// Whether others than its owner may read the file.
[[nodiscard]] bool othersMayRead(const std::filesystem::path& path);

/// What PostgreSQL's library would take from the environment where the service is silent:
/// PGHOST, PGHOSTADDR, PGSSLMODE.
[[nodiscard]] ServiceFacts completedFromEnvironment(ServiceFacts facts);

/// The files that PostgreSQL's library looks into, in its order: PGSERVICEFILE or
/// ~/.pg_service.conf, then PGSYSCONFDIR/pg_service.conf.
[[nodiscard]] std::vector<std::filesystem::path> serviceFiles();

/// The options of a connection to the service. Off this machine the connection must be encrypted:
/// `sslmode` is at least `require`, and stays `verify-ca` or `verify-full` where that is asked for.
/// On this machine are sockets, `localhost`, `::1` and addresses 127.x.x.x; of several hosts all
/// must be. A password comes from the service file or from PostgreSQL's password file; that of the
/// environment (PGPASSWORD) is never used.
[[nodiscard]] std::string connectOptions(const std::string& service, const ServiceFacts& facts);

} // namespace afterbeat::archive
