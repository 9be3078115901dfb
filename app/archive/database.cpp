#include "app/archive/database.h"

#include "core/bytes/byte_source.h"

#include <QCoreApplication>
#include <QSqlError>

#include <atomic>
#include <cstdio>
#include <filesystem>
#include <mutex>
#include <utility>

namespace afterbeat::archive {

namespace {

/// How long a writer waits for another, and how long somebody waits who only reads, ms.
constexpr int kPatienceMs = 60'000, kReadersPatienceMs = 10'000;
/// SQLITE_READONLY_ROLLBACK.
const QString kJournalWaits = QStringLiteral("776");
/// SQLITE_BUSY.
const QString kBusy = QStringLiteral("5");

QString freshName() {
  static std::atomic<unsigned> counter = 0;
  return QStringLiteral("archive-%1").arg(++counter);
}

/// Of the role on a server (SQLSTATE 42501, and 25006 for a server that takes no writes), or of the
/// user to a file (SQLITE_READONLY with all that it may be for).
bool isForbidden(const QSqlError& error, bool shared) {
  const QString code = error.nativeErrorCode();
  return shared ? code == QLatin1String("42501") || code == QLatin1String("25006")
                : (code.toInt() & 0xff) == 8;
}

/// What the database said, its first line.
std::string reason(const QSqlError& error) {
  QString why = error.databaseText().trimmed();
  if (why.isEmpty()) {
    why = error.driverText().trimmed();
  }
  const EnglishText none = inEnglish("Importers", "the database gave no reason");
  return why.isEmpty() ? std::string(none.text())
                       : why.section(QLatin1Char('\n'), 0, 0).toStdString();
}

/// `what` has places for the archive and for the reason.
[[noreturn]] void fail(const QSqlError& error, EnglishText what, const ArchivePlace& place) {
  throw ArchiveFailure(what, place.words(), reason(error));
}

constexpr EnglishText kCannotOpen = inEnglish("Importers", "The archive %1 cannot be opened: %2.");
constexpr EnglishText kCannotUse = inEnglish("Importers", "The archive %1 could not be used: %2.");
constexpr EnglishText kMayNotChange =
    inEnglish("Importers", "You may read the archive %1 and not change it; whoever looks after it "
                           "can allow it. The database says: %2.");

/// Once in a run, as PostgreSQL's library does of its password file.
void warnOfReaders(const std::filesystem::path& path) {
  static std::once_flag once;
  std::call_once(once, [&path] {
    std::fprintf(stderr,
                 "WARNING: service file \"%s\" holds a password and can be read by others; "
                 "permissions should be u=rw (0600) or less\n",
                 path.c_str());
  });
}

ServiceFacts lookUp(const std::string& service) {
  bool anyFile = false;
  for (const std::filesystem::path& path : serviceFiles()) {
    auto source = openFile(path);
    const auto text = source ? readAll(**source, 1 << 20) : tl::unexpected(source.error());
    if (!text) {
      continue;
    }
    anyFile = true;
    if (const auto facts = serviceIn(*text, service)) {
      if (facts->password && othersMayRead(path)) {
        warnOfReaders(path);
      }
      return *facts; // the first file that has it counts, as for PostgreSQL's library
    }
  }
  if (!anyFile) {
    throw ArchiveFailure(
        inEnglish("Importers", "There is no service file of PostgreSQL (~/.pg_service.conf)."));
  }
  throw ArchiveFailure(inEnglish("Importers",
                                 "There is no service “%1” in PostgreSQL's service file "
                                 "(~/.pg_service.conf). Ask whoever looks after the shared archive "
                                 "for its lines."),
                       service);
}

} // namespace

Database::Database(const ArchivePlace& place, Access access)
    : place_(place), access_(access), name_(freshName()) {
  // The drivers are plugins, which need the place of a program.
  Q_ASSERT(QCoreApplication::instance() != nullptr);
  database_ = QSqlDatabase::addDatabase(
      place.shared ? QStringLiteral("QPSQL") : QStringLiteral("QSQLITE"), name_);
  try {
    connect(access);
  } catch (...) {
    database_ = QSqlDatabase();
    QSqlDatabase::removeDatabase(name_);
    throw;
  }
}

Database::~Database() {
  kept_.clear();
  database_.close();
  database_ = QSqlDatabase();
  QSqlDatabase::removeDatabase(name_);
}

void Database::connect(Access access) {
  if (!database_.isValid()) {
    throw ArchiveFailure(
        place_.shared ? inEnglish("Importers", "Shared archives need the package libqt6sql6-psql.")
                      : inEnglish("Importers", "Archives need the package libqt6sql6-sqlite."));
  }
  if (place_.shared) {
    database_.setConnectOptions(QString::fromStdString(
        connectOptions(place_.name, completedFromEnvironment(lookUp(place_.name)))));
    if (!database_.open()) {
      fail(database_.lastError(), kCannotOpen, place_);
    }
    run(QStringLiteral("SET client_min_messages = error"));
    if (access == Access::read) {
      run(QStringLiteral("SET default_transaction_read_only = on"));
    }
    return;
  }
  openFile(access);
  if (access == Access::read) {
    finishCutWrite();
  } else {
    // The archive stays one file, to be copied or read from a medium that cannot be written.
    run(QStringLiteral("PRAGMA journal_mode = DELETE"));
    run(QStringLiteral("PRAGMA synchronous = FULL"));
    run(QStringLiteral("PRAGMA foreign_keys = ON"));
  }
  run(QStringLiteral("PRAGMA mmap_size = 268435456"));
}

void Database::openFile(Access access) {
  std::error_code error;
  if (access != Access::create && !std::filesystem::exists(place_.name, error)) {
    throw ArchiveFailure(inEnglish("Importers", "There is no archive %1."), place_.name);
  }
  database_.setDatabaseName(QString::fromStdString(place_.name));
  database_.setConnectOptions(
      access == Access::read
          ? QStringLiteral("QSQLITE_OPEN_READONLY;QSQLITE_BUSY_TIMEOUT=%1").arg(kReadersPatienceMs)
          : QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(kPatienceMs));
  if (!database_.open()) {
    fail(database_.lastError(), kCannotOpen, place_);
  }
}

/// A program that died while it wrote leaves a journal, which takes the right to write to undo.
void Database::finishCutWrite() {
  const QString any = QStringLiteral("SELECT count(*) FROM sqlite_master");
  QSqlQuery look(database_);
  if (look.exec(any)) {
    return;
  }
  if (look.lastError().nativeErrorCode() == kBusy) {
    failed(look); // the first statement would wait as long again
  }
  if (look.lastError().nativeErrorCode() != kJournalWaits) {
    return; // what else may be wrong the first statement says
  }
  look = QSqlQuery();
  database_.close();
  openFile(Access::write);
  run(any);
  database_.close();
  openFile(Access::read);
}

QSqlQuery Database::prepared(const QString& sql) {
  QSqlQuery query(database_);
  query.setForwardOnly(true);
  if (!query.prepare(sql)) {
    failed(query);
  }
  return query;
}

QSqlQuery Database::run(const QString& sql, const QVariantList& values) {
  if (values.isEmpty()) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!query.exec(sql)) {
      failed(query);
    }
    return query;
  }
  QSqlQuery query = prepared(sql);
  for (const QVariant& value : values) {
    query.addBindValue(value);
  }
  execute(query);
  return query;
}

QSqlQuery& Database::again(const QString& sql, const QVariantList& values) {
  auto at = kept_.find(sql);
  if (at == kept_.end()) {
    at = kept_.emplace(sql, prepared(sql)).first;
  }
  QSqlQuery& query = at->second;
  for (int i = 0; i < values.size(); ++i) {
    query.bindValue(i, values[i]);
  }
  execute(query);
  return query;
}

QVariant Database::valueAgain(const QString& sql, const QVariantList& values) {
  QSqlQuery& query = again(sql, values);
  QVariant value = query.next() ? query.value(0) : QVariant();
  query.finish(); // else it would go on reading
  return value;
}

QVariant Database::value(const QString& sql, const QVariantList& values) {
  QSqlQuery query = run(sql, values);
  return query.next() ? query.value(0) : QVariant();
}

void Database::inOne(const std::function<void()>& work) {
  // SQLite: the right to write is taken at once, so that two writers wait instead of failing.
  run(shared() ? QStringLiteral("BEGIN") : QStringLiteral("BEGIN IMMEDIATE"));
  inTransaction_ = true;
  try {
    if (shared()) {
      // One writer at a time; the number is this program's own.
      run(QStringLiteral("SELECT pg_advisory_xact_lock(7210451)"));
    }
    work();
    run(QStringLiteral("COMMIT"));
    inTransaction_ = false;
  } catch (...) {
    if (std::exchange(inTransaction_, false)) {
      QSqlQuery(database_).exec(QStringLiteral("ROLLBACK"));
    }
    throw;
  }
}

/// PostgreSQL takes no statement of a transaction after one that failed, not even to give the
/// failed one back; so the transaction ends first.
void Database::failed(const QSqlQuery& query) {
  const QSqlError error = query.lastError();
  if (inTransaction_ && shared()) {
    inTransaction_ = false;
    QSqlQuery(database_).exec(QStringLiteral("ROLLBACK"));
  }
  fail(error, access_ != Access::read && isForbidden(error, shared()) ? kMayNotChange : kCannotUse,
       place_);
}

void Database::execute(QSqlQuery& query) {
  if (!query.exec()) {
    failed(query);
  }
}

} // namespace afterbeat::archive
