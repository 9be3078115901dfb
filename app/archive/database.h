/// A connection to an archive's database, for one thread and one piece of work.
#pragma once

#include "app/archive/place.h"

#include <QSqlDatabase>
#include <QSqlQuery>
#include <QVariant>

#include <functional>
#include <map>

namespace afterbeat::archive {

enum class Access {
  read,
  /// Also changes it.
  write,
  /// Also makes the file of an SQLite archive where there is none.
  create,
};

/// Opened by the constructor, closed by the destructor; opening takes a millisecond for a file and
/// some more for a server. Belongs to the thread that made it. Everything throws `ArchiveFailure`.
class Database {
public:
  Database(const ArchivePlace& place, Access access);
  ~Database();
  Database(const Database&) = delete;
  Database& operator=(const Database&) = delete;

  [[nodiscard]] bool shared() const { return place_.shared; }
  /// Runs one statement with values for its `?`, in order.
  QSqlQuery run(const QString& sql, const QVariantList& values = {});
  /// The same by a statement that stays prepared: for what is run for each of many records. The
  /// result holds until the same words are run again.
  QSqlQuery& again(const QString& sql, const QVariantList& values);
  /// The first value of the first row of it; invalid where there is none.
  [[nodiscard]] QVariant valueAgain(const QString& sql, const QVariantList& values);
  /// A statement to be run often.
  [[nodiscard]] QSqlQuery prepared(const QString& sql);
  /// Runs a prepared statement.
  void execute(QSqlQuery& query);
  /// The first value of the first row; invalid where there is none.
  [[nodiscard]] QVariant value(const QString& sql, const QVariantList& values = {});
  /// All of `work` or nothing of it. Others that write wait; others that read see the old state
  /// until the end.
  void inOne(const std::function<void()>& work);

private:
  void connect(Access access);
  void openFile(Access access);
  void finishCutWrite();
  [[noreturn]] void failed(const QSqlQuery& query);

  ArchivePlace place_;
  Access access_;
  QString name_;
  QSqlDatabase database_;
  std::map<QString, QSqlQuery> kept_;
  bool inTransaction_ = false;
};

} // namespace afterbeat::archive
