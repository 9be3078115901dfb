#include "app/archive/making_store.h"

#include "core/bytes/digest.h"
#include "core/measures/definitions_version.h"

#include <algorithm>

namespace afterbeat::archive {

namespace {

QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

Making makingFrom(const QSqlQuery& row) {
  Making making;
  making.id = row.value(0).toLongLong();
  if (auto profile = parseProfile(row.value(1).toString().toStdString())) {
    making.settings.figures.profile = std::move(*profile);
  } else {
    throw ArchiveFailure(
        ArchiveError({phrase(inEnglish("Importers", "The archive holds a guideline that cannot be "
                                                    "read.")),
                      profile.error()}));
  }
  making.settings.figures.pauseThreshold = Duration{row.value(2).toLongLong()};
  making.settings.figures.windowEnd = row.value(3).toString() == text(name(WindowEnd::recordEnd))
                                          ? WindowEnd::recordEnd
                                          : WindowEnd::lastActivity;
  making.settings.derive = deriveModeFrom(row.value(4).toString().toStdString());
  making.definitions = row.value(5).toInt();
  making.inUse = row.value(6).toInt() != 0;
  return making;
}

} // namespace

std::vector<Making> readMakings(Database& database, bool counted) {
  std::vector<Making> makings;
  QSqlQuery rows = database.run(QStringLiteral(
      "SELECT id, profile_text, pause_threshold_us, window_end, derive, definitions, in_use "
      "FROM making ORDER BY in_use DESC, id"));
  while (rows.next()) {
    makings.push_back(makingFrom(rows));
  }
  for (Making& making : makings) {
    if (counted) {
      making.records =
          database
              .value(QStringLiteral("SELECT count(*) FROM computed c JOIN version v ON "
                                    "v.id = c.version_id AND v.current = 1 "
                                    "WHERE c.making_id = ?"),
                     {qlonglong{making.id}})
              .toULongLong();
    }
  }
  return makings;
}

std::int64_t storeMaking(Database& database, const MakingSettings& settings) {
  const std::string profile = profileJson(settings.figures.profile);
  const QVariantList key{
      text(sha256Hex(profile)), qlonglong{settings.figures.pauseThreshold.count()},
      text(name(settings.figures.windowEnd)), text(name(settings.derive)), kDefinitionsVersion};
  database.run(QStringLiteral("INSERT INTO making (profile_hash, pause_threshold_us, window_end, "
                              "derive, definitions, profile, profile_text, in_use) "
                              "VALUES (?, ?, ?, ?, ?, ?, ?, 1) ON CONFLICT (profile_hash, "
                              "pause_threshold_us, window_end, derive, definitions) "
                              "DO UPDATE SET in_use = 1"),
               key + QVariantList{text(settings.figures.profile.id), text(profile)});
  return database
      .value(QStringLiteral("SELECT id FROM making WHERE profile_hash = ? AND "
                            "pause_threshold_us = ? AND window_end = ? AND derive = ? AND "
                            "definitions = ?"),
             key)
      .toLongLong();
}

std::vector<Making> makingsToCompute(Database& database) {
  std::vector<Making> makings = readMakings(database, false);
  bool any = false;
  for (const Making& making : makings) {
    if (making.inUse && making.definitions > kDefinitionsVersion) {
      throw ArchiveFailure(
          inEnglish("Importers",
                    "The figures of this archive follow newer definitions (version %1, this "
                    "program knows %2). Nothing was touched; use the newer program."),
          making.definitions, kDefinitionsVersion);
    }
    if (making.inUse && making.definitions != kDefinitionsVersion) {
      storeMaking(database, making.settings);
      database.run(QStringLiteral("UPDATE making SET in_use = 0 WHERE id = ?"),
                   {qlonglong{making.id}});
    }
    any = any || making.inUse;
  }
  if (!any) {
    storeMaking(database, {});
  }
  makings = readMakings(database, false);
  makings.erase(std::remove_if(makings.begin(), makings.end(),
                               [](const Making& making) { return !making.inUse; }),
                makings.end());
  return makings;
}

std::int64_t makingOr(Database& database, std::int64_t making) {
  if (making != 0) {
    return making;
  }
  const QVariant first =
      database.value(QStringLiteral("SELECT id FROM making ORDER BY in_use DESC, id LIMIT 1"));
  return first.toLongLong(); // 0 where nothing was computed yet
}

std::vector<int> measureNumbers(Database& database) {
  std::vector<int> numbers(static_cast<std::size_t>(MeasureId::count_), 0);
  QSqlQuery rows = database.run(QStringLiteral("SELECT id, name FROM measure"));
  while (rows.next()) {
    if (const MeasureInfo* info = measureInfo(rows.value(1).toString().toStdString())) {
      numbers[static_cast<std::size_t>(info->id)] = rows.value(0).toInt();
    }
  }
  return numbers;
}

} // namespace afterbeat::archive
