#include "app/archive/store.h"

#include "app/archive/refused_files.h"

#include <algorithm>

#include <QDateTime>

namespace afterbeat::archive {

namespace {

/// PostgreSQL holds no text with a NUL in it.
QString text(const std::string& words) {
  return QString::fromStdString(words).remove(QChar::Null);
}

QByteArray raw(const std::string& bytes) {
  return {bytes.data(), static_cast<qsizetype>(bytes.size())};
}

QString kindWord(const std::optional<RecordKind>& kind) {
  return kind ? text(std::string(name(*kind))) : QStringLiteral("");
}

QVariant dayNumber(const RecordFacts& facts) {
  return facts.day ? QVariant(static_cast<int>(facts.day->time_since_epoch().count()))
                   : QVariant(QMetaType::fromType<int>());
}

} // namespace

// In statements here the plus keeps databases from looking through all newest versions by the index
// of `current` for the few of one record.
Store::Store(Database& database, const std::vector<Making>& makings, bool keepBytes)
    : database_(database), makings_(makings), measures_(measureNumbers(database)),
      keepBytes_(keepBytes) {}

std::int64_t Store::recordFor(const TakenFile& file, const TakenRecord& record) {
  const RecordFacts& facts = record.figures.front().facts;
  QString name = text(facts.id);
  if (name.isEmpty()) {
    // Without an id of its own a record is known by where it is.
    const QVariant same = database_.valueAgain(
        QStringLiteral("SELECT record_id FROM version WHERE path = ? AND part = ? "
                       "ORDER BY number DESC LIMIT 1"),
        {text(file.path.string()), record.part});
    if (same.isValid()) {
      return same.toLongLong();
    }
    name = QStringLiteral("sha256:%1/%2").arg(text(file.sha256)).arg(record.part);
  }
  database_.again(
      QStringLiteral("INSERT INTO record (name) VALUES (?) ON CONFLICT (name) DO NOTHING"), {name});
  return database_.valueAgain(QStringLiteral("SELECT id FROM record WHERE name = ?"), {name})
      .toLongLong();
}

bool Store::takenBack(std::int64_t owner, std::int64_t version, const TakenFile& file) {
  const QVariant there = database_.valueAgain(
      QStringLiteral("SELECT path FROM version WHERE record_id = ? AND +current = 1"),
      {qlonglong{owner}});
  if (there.toString() != text(file.path.string())) {
    return false;
  }
  database_.again(QStringLiteral("UPDATE version SET current = CASE WHEN id = ? THEN 1 ELSE 0 END "
                                 "WHERE record_id = ?"),
                  {qlonglong{version}, qlonglong{owner}});
  return true;
}

void Store::moved(const std::string& sha256, const std::filesystem::path& to) {
  database_.again(QStringLiteral("UPDATE version SET path = ?, file = ? WHERE sha256 = ?"),
                  {text(to.string()), text(to.filename().string()), text(sha256)});
}

// `+current`: the planner must go by the record; by `current` it would look through all of them.
Store::Place Store::versionFor(const TakenFile& file, const TakenRecord& record) {
  QSqlQuery& known = database_.again(
      QStringLiteral("SELECT id, record_id, current FROM version WHERE sha256 = ? AND part = ?"),
      {text(file.sha256), record.part});
  if (known.next()) {
    const std::int64_t version = known.value(0).toLongLong(), owner = known.value(1).toLongLong();
    const bool current = known.value(2).toInt() != 0;
    known.finish();
    return {version, !current && takenBack(owner, version, file) ? Stored::changed : Stored::known};
  }
  known.finish();
  const RecordFacts& facts = record.figures.front().facts;
  const std::int64_t owner = recordFor(file, record);
  const int number =
      1 + database_
              .valueAgain(QStringLiteral("SELECT coalesce(max(number), 0) FROM version "
                                         "WHERE record_id = ?"),
                          {qlonglong{owner}})
              .toInt();
  database_.again(
      QStringLiteral("UPDATE version SET current = 0 WHERE record_id = ? AND +current = 1"),
      {qlonglong{owner}});
  database_.again(
      QStringLiteral("INSERT INTO version (record_id, number, current, sha256, part, path, file, "
                     "day, kind, site, team, device, synthetic, taken_in) "
                     "VALUES (?, ?, 1, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"),
      {qlonglong{owner}, number, text(file.sha256), record.part, text(file.path.string()),
       text(file.path.filename().string()), dayNumber(facts), kindWord(facts.kind),
       text(facts.site), text(facts.team), text(facts.device), facts.synthetic ? 1 : 0,
       QDateTime::currentDateTimeUtc().toString(Qt::ISODate)});
  const std::int64_t version =
      database_
          .valueAgain(QStringLiteral("SELECT id FROM version WHERE sha256 = ? AND part = ?"),
                      {text(file.sha256), record.part})
          .toLongLong();
  database_.again(QStringLiteral("INSERT INTO sketch VALUES (?, ?)"),
                  {qlonglong{version}, raw(record.sketch)});
  return {version, number == 1 ? Stored::added : Stored::changed};
}

void Store::putCells(std::int64_t making, std::int64_t version, const TakenFigures& figures) {
  // Not recorded: no row. Not applicable: a row without a value.
  QString sql;
  QVariantList values;
  for (std::size_t i = 0; i < figures.cells.size(); ++i) {
    const FigureCell& cell = figures.cells[i];
    if (cell.status == Status::notRecorded) {
      continue;
    }
    sql += sql.isEmpty() ? QStringLiteral("INSERT INTO figure VALUES (?, ?, ?, ?, ?)")
                         : QStringLiteral(", (?, ?, ?, ?, ?)");
    values << qlonglong{making} << measures_[i] << qlonglong{version}
           << (cell.ok() ? QVariant(cell.value) : QVariant(QMetaType::fromType<double>()))
           << (cell.of > 0 ? QVariant(static_cast<double>(cell.of))
                           : QVariant(QMetaType::fromType<double>()));
  }
  if (!sql.isEmpty()) {
    database_.again(sql, values);
  }
}

void Store::putFigures(std::int64_t version, const TakenRecord& record) {
  for (std::size_t i = 0; i < makings_.size(); ++i) {
    const QVariantList key{qlonglong{makings_[i].id}, qlonglong{version}};
    const RecordFacts& facts = record.figures[i].facts;
    const bool there =
        database_
            .valueAgain(
                QStringLiteral("SELECT 1 FROM computed WHERE making_id = ? AND version_id = ?"),
                key)
            .isValid();
    if (there) {
      continue;
    }
    const QVariant shock =
        facts.hadShock ? QVariant(*facts.hadShock ? 1 : 0) : QVariant(QMetaType::fromType<int>());
    const QVariant cause = facts.longestPauseCause
                               ? QVariant(text(std::string(name(*facts.longestPauseCause))))
                               : QVariant(QMetaType::fromType<QString>());
    database_.again(QStringLiteral("INSERT INTO computed (making_id, version_id, evidence, "
                                   "had_shock, longest_cause, setting_differs) "
                                   "VALUES (?, ?, ?, ?, ?, ?)"),
                    key + QVariantList{text(std::string(name(facts.evidence))), shock, cause,
                                       facts.settingDiffers ? 1 : 0});
    putCells(makings_[i].id, version, record.figures[i]);
  }
}

Stored Store::put(const TakenFile& file) {
  Stored stored = Stored::known;
  for (const TakenRecord& record : file.records) {
    const Place place = versionFor(file, record);
    stored = place.stored == Stored::known ? stored : place.stored;
    putFigures(place.version, record);
    if (keepBytes_ && !file.bytes.empty()) {
      database_.again(QStringLiteral("INSERT INTO content VALUES (?, ?) "
                                     "ON CONFLICT (version_id) DO NOTHING"),
                      {qlonglong{place.version}, raw(file.bytes)});
    }
  }
  forgetRefused(database_, file.path);
  return stored;
}

} // namespace afterbeat::archive
