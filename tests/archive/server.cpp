#include "tests/archive/server.h"

#include "app/archive/database.h"
#include "core/bytes/byte_source.h"

#include <chrono>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <thread>

#include <arpa/inet.h>
#include <csignal>
#include <grp.h>
#include <ifaddrs.h>
#include <pwd.h>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

namespace afterbeat::archive::testing {

namespace {

namespace fs = std::filesystem;

/// Folder of `initdb` and `postgres`; empty where they are not installed.
fs::path programs() {
  std::error_code error;
  fs::path newest;
  for (const auto& version : fs::directory_iterator("/usr/lib/postgresql", error)) {
    const fs::path bin = version.path() / "bin";
    if (fs::exists(bin / "postgres", error) && fs::exists(bin / "initdb", error) && bin > newest) {
      newest = bin;
    }
  }
  return newest;
}

/// The server refuses to run as root; then it is run as the user that its package made.
const passwd* serverUser() {
  return geteuid() == 0 ? getpwnam("postgres") : nullptr;
}

/// Starts `program` as the server's user, and so that it ends with this program.
void begin(QProcess& process, const fs::path& program, const QStringList& arguments) {
  QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
  environment.insert(QStringLiteral("LC_ALL"), QStringLiteral("C"));
  process.setProcessEnvironment(environment);
  process.setWorkingDirectory(QStringLiteral("/"));
  const passwd* user = serverUser();
  process.setChildProcessModifier([user] {
    if (user != nullptr &&
        (setgroups(0, nullptr) != 0 || setgid(user->pw_gid) != 0 || setuid(user->pw_uid) != 0)) {
      _exit(126);
    }
    prctl(PR_SET_PDEATHSIG, SIGINT);
  });
  process.setProcessChannelMode(QProcess::MergedChannels);
  process.start(QString::fromStdString(program.string()), arguments);
}

int freePort() {
  const int one = socket(AF_INET, SOCK_STREAM, 0);
  sockaddr_in address{};
  address.sin_family = AF_INET;
  address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
  socklen_t size = sizeof address;
  auto* plain = reinterpret_cast<sockaddr*>(&address);
  const bool found = bind(one, plain, size) == 0 && getsockname(one, plain, &size) == 0;
  close(one);
  if (!found) {
    throw std::runtime_error("no free port");
  }
  return ntohs(address.sin_port);
}

std::optional<std::string> findOuterAddress() {
  ifaddrs* first = nullptr;
  std::optional<std::string> found;
  if (getifaddrs(&first) != 0) {
    return found;
  }
  for (const ifaddrs* one = first; one != nullptr && !found; one = one->ifa_next) {
    if (one->ifa_addr == nullptr || one->ifa_addr->sa_family != AF_INET) {
      continue;
    }
    char words[INET_ADDRSTRLEN] = {};
    const auto* address = reinterpret_cast<const sockaddr_in*>(one->ifa_addr);
    inet_ntop(AF_INET, &address->sin_addr, words, sizeof words);
    if (std::string_view(words).substr(0, 4) != "127.") {
      found = words;
    }
  }
  freeifaddrs(first);
  return found;
}

void write(const fs::path& path, const std::string& text) {
  std::ofstream(path) << text;
  fs::permissions(path, fs::perms::owner_read | fs::perms::owner_write);
}

/// The `number`th block of SQL in the description of archives.
std::string documented(std::size_t number) {
  const fs::path page = fs::path(AFTERBEAT_SOURCE_DIR) / "resources/definitions/archive.md";
  const std::string text = readAll(**openFile(page), 1U << 20U).value();
  std::size_t at = 0;
  for (std::size_t i = 0; i <= number; ++i) {
    at = text.find("```sql\n", at);
    if (at == std::string::npos) {
      throw std::runtime_error("archive.md lacks a block of SQL");
    }
    at += 7;
  }
  return text.substr(at, text.find("```", at) - at);
}

} // namespace

bool serverInstalled() {
  return !programs().empty() && (geteuid() != 0 || serverUser() != nullptr);
}

Server& Server::running(bool safely) {
  static Server server(safely);
  return server;
}

Server::Server(bool safely) : port_(freePort()), outer_(findOuterAddress()) {
  const fs::path folder = folder_.path().toStdString();
  fs::permissions(folder, fs::perms::others_exec | fs::perms::group_exec, fs::perm_options::add);
  start(safely);
  const auto service = [this](const char* name, const char* database) {
    return fmt::format("[{0}]\nhost=127.0.0.1\nport={1}\ndbname={2}\nuser={0}\n", name, port_,
                       database);
  };
  write(folder / "services", service("admin", "postgres") + service("season_keeper", "season") +
                                 service("season_reader", "season") +
                                 fmt::format("[owner]\nhost=127.0.0.1\nport={}\ndbname=season\n"
                                             "user=admin\n",
                                             port_));
  write(folder / "passwords", "*:*:*:*:quay lantern\n");
  setenv("PGSERVICEFILE", (folder / "services").c_str(), 1);
  setenv("PGPASSFILE", (folder / "passwords").c_str(), 1);
  makeRoles();
}

void Server::start(bool safely) {
  const fs::path folder = folder_.path().toStdString(), data = folder / "data";
  fs::create_directory(data);
  fs::permissions(data, fs::perms::owner_all);
  write(folder / "first", "quay lantern\n");
  if (const passwd* user = serverUser();
      user != nullptr && (chown(data.c_str(), user->pw_uid, user->pw_gid) != 0 ||
                          chown((folder / "first").c_str(), user->pw_uid, user->pw_gid) != 0)) {
    throw std::runtime_error("cannot give the data to the server's user");
  }
  const QString where = QString::fromStdString(data.string());
  QProcess init;
  begin(init, programs() / "initdb",
        {QStringLiteral("-D"), where, QStringLiteral("-U"), QStringLiteral("admin"),
         QStringLiteral("--auth=scram-sha-256"),
         QString::fromStdString("--pwfile=" + (folder / "first").string()),
         QStringLiteral("--no-sync"), QStringLiteral("--no-locale"),
         QStringLiteral("--encoding=UTF8")});
  if (!init.waitForFinished(120'000) || init.exitCode() != 0) {
    throw std::runtime_error("initdb: " + init.readAll().toStdString());
  }
  if (outer_) {
    std::ofstream(data / "pg_hba.conf", std::ios::app)
        << "host all all " << *outer_ << "/32 scram-sha-256\n";
  }
  const std::string listen = "listen_addresses=127.0.0.1" + (outer_ ? "," + *outer_ : "");
  begin(process_, programs() / "postgres",
        {QStringLiteral("-D"), where, QStringLiteral("-p"), QString::number(port_),
         QStringLiteral("-c"), QString::fromStdString(listen), QStringLiteral("-c"),
         QStringLiteral("unix_socket_directories="), QStringLiteral("-c"),
         safely ? QStringLiteral("fsync=on") : QStringLiteral("fsync=off")});
  QByteArray said;
  while (!said.contains("ready to accept connections")) {
    if (!process_.waitForReadyRead(120'000)) {
      throw std::runtime_error("postgres: " + said.toStdString());
    }
    said += process_.readAll();
  }
}

void Server::makeRoles() {
  runAs("admin", documented(0) + "ALTER ROLE season_keeper PASSWORD 'quay lantern';\n"
                                 "ALTER ROLE season_reader PASSWORD 'quay lantern';\n");
}

void Server::empty() {
  runAs("owner", "DROP SCHEMA public CASCADE;\n"
                 "CREATE SCHEMA public AUTHORIZATION pg_database_owner;\n");
  runAs("season_keeper", documented(1));
}

void Server::useTls(bool yes) {
  const fs::path data = fs::path(folder_.path().toStdString()) / "data";
  if (yes && !fs::exists(data / "server.crt")) {
    QProcess openssl;
    begin(openssl, "openssl",
          {QStringLiteral("req"), QStringLiteral("-new"), QStringLiteral("-x509"),
           QStringLiteral("-days"), QStringLiteral("2"), QStringLiteral("-nodes"),
           QStringLiteral("-newkey"), QStringLiteral("ec"), QStringLiteral("-pkeyopt"),
           QStringLiteral("ec_paramgen_curve:P-256"), QStringLiteral("-subj"),
           QStringLiteral("/CN=localhost"), QStringLiteral("-keyout"),
           QString::fromStdString((data / "server.key").string()), QStringLiteral("-out"),
           QString::fromStdString((data / "server.crt").string())});
    if (!openssl.waitForFinished(60'000) || openssl.exitCode() != 0) {
      throw std::runtime_error("openssl: " + openssl.readAll().toStdString());
    }
    fs::permissions(data / "server.key", fs::perms::owner_read | fs::perms::owner_write);
  }
  runAs("admin", yes ? "ALTER SYSTEM SET ssl = on" : "ALTER SYSTEM SET ssl = off");
  runAs("admin", "SELECT pg_reload_conf()");
  const QString now = yes ? QStringLiteral("on") : QStringLiteral("off");
  for (int i = 0; i < 100; ++i) {
    // What a connection is told when it begins.
    Database database({true, "admin"}, Access::read);
    if (database.value(QStringLiteral("SHOW ssl")).toString() == now) {
      return;
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
  }
  throw std::runtime_error("the server does not take the setting ssl");
}

void Server::addService(const std::string& lines) {
  std::ofstream(fs::path(folder_.path().toStdString()) / "services", std::ios::app) << lines;
}

Server::~Server() {
  kill(static_cast<pid_t>(process_.processId()), SIGINT);
  process_.waitForFinished(30'000);
}

void runAs(const std::string& service, const std::string& sql) {
  Database database({true, service}, Access::write);
  const QStringList statements =
      QString::fromStdString(sql).split(QStringLiteral(";\n"), Qt::SkipEmptyParts);
  for (const QString& statement : statements) {
    if (!statement.trimmed().isEmpty()) {
      database.run(statement);
    }
  }
}

} // namespace afterbeat::archive::testing
