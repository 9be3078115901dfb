#include "app/archive/archive.h"

#include "app/archive/refused_files.h"
#include "app/archive/schema.h"
#include "app/archive/season_rows.h"

#include <algorithm>

#include <unistd.h>

namespace afterbeat::archive {

namespace {

/// Runs `work` on a fresh connection; what it throws becomes an error.
template <typename Work>
auto with(const ArchivePlace& place, Access access, const Work& work)
    -> Expected<decltype(work(std::declval<Database&>()))> {
  try {
    Database database(place, access);
    if (access != Access::create) {
      requireVersion(database);
    }
    if constexpr (std::is_void_v<decltype(work(database))>) {
      work(database);
      return {};
    } else {
      return work(database);
    }
  } catch (const ArchiveFailure& failure) {
    return tl::unexpected(failure.error);
  }
}

/// Tables of an older program, where this one may write; where not, `requireVersion` says so.
void bringUpToDate(const ArchivePlace& place, Database& reading) {
  const int found = versionOf(reading);
  if (found == 0 || found >= schemaVersion()) {
    return;
  }
  try {
    Database database(place, Access::write);
    migrate(database);
  } catch (const ArchiveFailure&) {
  }
}

KeptFile keptFrom(const QSqlQuery& row) {
  return {row.value(0).toString().toStdString(), row.value(1).toString().toStdString(),
          row.value(2).toInt(), row.value(3).toInt() != 0};
}

const QString kKept = QStringLiteral(
    "SELECT v.path, v.sha256, v.part, "
    "CASE WHEN EXISTS (SELECT 1 FROM content c WHERE c.version_id = v.id) THEN 1 ELSE 0 END "
    "FROM version v ");

/// `few`: cells are fetched for these records alone.
Season seasonOf(const ArchivePlace& place, std::int64_t making, std::vector<RecordFacts> records,
                bool few) {
  Season season;
  season.records = std::move(records);
  sortByDay(season.records);
  auto shelf = std::make_shared<ColumnShelf>(place, making, season.records, few);
  season.column = [shelf](MeasureId id) -> const FigureColumn& { return shelf->column(id); };
  return season;
}

FigureCell cellFrom(const QVariant& value) {
  return {value.toDouble(), value.isNull() ? Status::notApplicable : Status::ok};
}

std::string readNote(Database& database, const std::string& name) {
  return database
      .value(QStringLiteral("SELECT value FROM note WHERE name = ?"),
             {QString::fromStdString(name)})
      .toString()
      .toStdString();
}

void writeNote(Database& database, const std::string& name, const std::string& value) {
  database.run(QStringLiteral("INSERT INTO note VALUES (?, ?) "
                              "ON CONFLICT (name) DO UPDATE SET value = excluded.value"),
               {QString::fromStdString(name), QString::fromStdString(value)});
}

} // namespace

std::vector<MakingPair> pairsToCompare(const std::vector<Making>& makings) {
  std::vector<MakingPair> pairs;
  for (const Making& before : makings) {
    for (const Making& after : makings) {
      if (after.inUse && after.id > before.id && before.records > 0) {
        pairs.push_back({before, after});
      }
    }
  }
  return pairs;
}

Expected<Archive> Archive::openOrCreate(const ArchivePlace& place) {
  auto made = with(place, Access::create, [](Database& database) { migrate(database); });
  if (!made) {
    return tl::unexpected(made.error());
  }
  return Archive(place);
}

Expected<Archive> Archive::open(const ArchivePlace& place) {
  try {
    Database reading(place, Access::read);
    bringUpToDate(place, reading);
    requireVersion(reading);
    return Archive(place);
  } catch (const ArchiveFailure& failure) {
    return tl::unexpected(failure.error);
  }
}

Expected<std::vector<Making>> Archive::makings() const {
  return with(place_, Access::read, [](Database& database) { return readMakings(database, true); });
}

Expected<std::optional<Making>> Archive::makingWith(const MakingSettings& settings) const {
  const std::string profile = profileJson(settings.figures.profile);
  // Without counting their records: that reads all of them.
  return with(place_, Access::read, [&](Database& database) -> std::optional<Making> {
    for (const Making& making : readMakings(database, false)) {
      const FigureSettings& figures = making.settings.figures;
      if (making.inUse && making.settings.derive == settings.derive &&
          figures.pauseThreshold == settings.figures.pauseThreshold &&
          figures.windowEnd == settings.figures.windowEnd &&
          profileJson(figures.profile) == profile) {
        return making;
      }
    }
    return std::nullopt;
  });
}

Expected<std::int64_t> Archive::use(const MakingSettings& settings) const {
  return with(place_, Access::write, [&settings](Database& database) {
    std::int64_t id = 0;
    database.inOne([&] { id = storeMaking(database, settings); });
    return id;
  });
}

Expected<void> Archive::stopUsing(std::int64_t making) const {
  return with(place_, Access::write, [making](Database& database) {
    database.run(QStringLiteral("UPDATE making SET in_use = 0 WHERE id = ?"), {qlonglong{making}});
  });
}

Expected<std::size_t> Archive::recordCount() const {
  return with(place_, Access::read, [](Database& database) -> std::size_t {
    return database.value(QStringLiteral("SELECT count(*) FROM version WHERE current = 1"))
        .toULongLong();
  });
}

Expected<std::vector<RecordFacts>> Archive::latest(std::size_t count, std::int64_t making) const {
  return with(place_, Access::read, [=](Database& database) {
    return readFacts(database, makingOr(database, making), std::max<std::size_t>(count, 1));
  });
}

Expected<Season> Archive::latestSeason(std::size_t count, std::int64_t making) const {
  return with(place_, Access::read, [&](Database& database) {
    const std::int64_t used = makingOr(database, making);
    const std::size_t most = std::max<std::size_t>(count, 1);
    // One more shows whether the last day goes on.
    std::vector<RecordFacts> records = readFacts(database, used, most + 1);
    if (records.size() > most) {
      const auto cut = records.back().day;
      records.pop_back();
      const auto first = std::find_if(records.begin(), records.end(),
                                      [&](const RecordFacts& one) { return one.day == cut; });
      if (first != records.begin()) {
        records.erase(first, records.end());
      }
    }
    return seasonOf(place_, used, std::move(records), true);
  });
}

Expected<Season> Archive::season(std::int64_t making) const {
  return with(place_, Access::read, [&](Database& database) {
    const std::int64_t used = makingOr(database, making);
    return seasonOf(place_, used, readFacts(database, used, 0), false);
  });
}

Expected<std::map<std::int64_t, RowsSketch>>
Archive::sketches(const std::vector<std::int64_t>& numbers) const {
  return with(place_, Access::read, [&numbers](Database& database) {
    std::map<std::int64_t, RowsSketch> sketches;
    QSqlQuery one =
        database.prepared(QStringLiteral("SELECT bytes FROM sketch WHERE version_id = ?"));
    for (const std::int64_t number : numbers) {
      one.bindValue(0, qlonglong{number});
      database.execute(one);
      if (one.next()) {
        if (auto sketch = decode(one.value(0).toByteArray().toStdString())) {
          sketches.emplace(number, std::move(*sketch));
        }
      }
      one.finish();
    }
    return sketches;
  });
}

Expected<KeptFile> Archive::file(std::int64_t number) const {
  return with(place_, Access::read, [number](Database& database) {
    QSqlQuery row = database.run(kKept + QStringLiteral("WHERE v.id = ?"), {qlonglong{number}});
    if (!row.next()) {
      throw ArchiveFailure(inEnglish("Importers", "This record is not in the archive any more."));
    }
    return keptFrom(row);
  });
}

Expected<std::optional<std::string>> Archive::bytes(std::int64_t number) const {
  return with(place_, Access::read, [number](Database& database) {
    const QVariant kept = database.value(
        QStringLiteral("SELECT bytes FROM content WHERE version_id = ?"), {qlonglong{number}});
    return kept.isValid() ? std::optional<std::string>(kept.toByteArray().toStdString())
                          : std::nullopt;
  });
}

Expected<std::vector<KeptFile>> Archive::versions(std::int64_t number) const {
  return with(place_, Access::read, [number](Database& database) {
    std::vector<KeptFile> versions;
    QSqlQuery row = database.run(
        kKept + QStringLiteral("WHERE v.record_id = (SELECT record_id FROM version WHERE id = ?) "
                               "ORDER BY v.number"),
        {qlonglong{number}});
    while (row.next()) {
      versions.push_back(keptFrom(row));
    }
    return versions;
  });
}

Expected<std::vector<RefusedFile>> Archive::refused() const {
  return with(place_, Access::read, readRefused);
}

Expected<std::vector<Moved>> Archive::moved(std::int64_t before, std::int64_t after) const {
  return with(place_, Access::read, [=](Database& database) {
    // A figure without a row was not recorded; the outer join keeps those on either side.
    const std::vector<int> numbers = measureNumbers(database);
    QSqlQuery row = database.prepared(QStringLiteral(
        "SELECT v.id, b.version_id, b.value, a.version_id, a.value FROM version v "
        "JOIN computed cb ON cb.making_id = ? AND cb.version_id = v.id "
        "JOIN computed ca ON ca.making_id = ? AND ca.version_id = v.id "
        "LEFT JOIN figure b ON b.making_id = ? AND b.measure_id = ? AND b.version_id = v.id "
        "LEFT JOIN figure a ON a.making_id = ? AND a.measure_id = ? AND a.version_id = v.id "
        "WHERE v.current = 1 ORDER BY v.id"));
    std::vector<Moved> moved;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
      const QVariantList values{qlonglong{before}, qlonglong{after}, qlonglong{before},
                                numbers[i],        qlonglong{after}, numbers[i]};
      for (int at = 0; at < values.size(); ++at) {
        row.bindValue(at, values[at]);
      }
      database.execute(row);
      while (row.next()) {
        const auto cell = [&row](int at) {
          return row.value(at).isNull() ? FigureCell{} : cellFrom(row.value(at + 1));
        };
        const FigureCell was = cell(1), is = cell(3);
        if (was.status != is.status || (was.ok() && was.value != is.value)) {
          moved.push_back({row.value(0).toLongLong(), static_cast<MeasureId>(i), was, is});
        }
      }
      row.finish();
    }
    return moved;
  });
}

Expected<std::string> Archive::note(const std::string& name) const {
  return with(place_, Access::read,
              [&name](Database& database) { return readNote(database, name); });
}

Expected<void> Archive::setNote(const std::string& name, const std::string& value) const {
  return with(place_, Access::write, [&](Database& database) { writeNote(database, name, value); });
}

Expected<std::string>
Archive::changeNote(const std::string& name,
                    const std::function<std::string(const std::string&)>& change) const {
  return with(place_, Access::write, [&](Database& database) {
    std::string changed;
    database.inOne([&] {
      const std::string there = readNote(database, name);
      changed = change(there);
      if (changed != there) {
        writeNote(database, name, changed);
      }
    });
    return changed;
  });
}

Expected<bool> Archive::mayWrite() const {
  return with(place_, Access::read, [this](Database& database) {
    if (database.shared()) {
      return database
          .value(QStringLiteral("SELECT has_table_privilege('note', 'INSERT') AND "
                                "has_table_privilege('note', 'UPDATE') AND "
                                "NOT pg_is_in_recovery()"))
          .toBool();
    }
    // SQLite writes its journal beside the file.
    const std::filesystem::path folder = std::filesystem::path(place_.name).parent_path();
    return access(place_.name.c_str(), W_OK) == 0 &&
           access(folder.empty() ? "." : folder.c_str(), W_OK) == 0;
  });
}

} // namespace afterbeat::archive
