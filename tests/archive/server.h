/// A real PostgreSQL server for tests: of its own user, on loopback, with data that go when it
/// ends.
#pragma once

#include "app/archive/place.h"

#include <QProcess>
#include <QTemporaryDir>

#include <optional>
#include <string>

namespace afterbeat::archive::testing {

/// Whether there is something to start; tests of shared archives are skipped only where not.
[[nodiscard]] bool serverInstalled();

/// Started by the first that asks, ended with the test program, whatever becomes of that. Services:
/// `admin`, and of the database `season` those that resources/definitions/archive.md describes,
/// `season_keeper` and `season_reader`, made by its very SQL. Passwords are in a password file
/// only.
class Server {
public:
  /// `safely`: writes are on the disk before they count, as outside tests; the first call decides.
  [[nodiscard]] static Server& running(bool safely = false);
  ~Server();
  Server(const Server&) = delete;
  Server& operator=(const Server&) = delete;

  /// Empties the database `season`.
  void empty();
  /// An address of this machine that is no loopback, which the server listens on too.
  [[nodiscard]] const std::optional<std::string>& outerAddress() const { return outer_; }
  [[nodiscard]] int port() const { return port_; }
  /// Whether it takes encrypted connections, with a certificate of its own; at first it does not.
  void useTls(bool yes);
  /// Adds lines to the service file.
  void addService(const std::string& lines);

private:
  explicit Server(bool safely);
  void start(bool safely);
  void makeRoles();

  QTemporaryDir folder_;
  QProcess process_;
  int port_ = 0;
  std::optional<std::string> outer_;
};

/// Runs each statement of `sql` (apart by `;` at a line's end) as the user of a service.
void runAs(const std::string& service, const std::string& sql);

} // namespace afterbeat::archive::testing
