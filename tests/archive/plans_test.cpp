// How the databases look for what is asked often: by an index, and without sorting.
#include "tests/archive/archive_folder.h"
#include "tests/archive/server.h"

#include "app/archive/season_rows.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace afterbeat::archive {
namespace {

using namespace testing;
using ::testing::HasSubstr;
using ::testing::Not;

class Plans : public ::testing::TestWithParam<Engine> {
protected:
  void SetUp() override {
    if (GetParam() == Engine::server && !serverInstalled()) {
      GTEST_SKIP() << "no PostgreSQL server is installed";
    }
    std::ignore = take(folder_.openArchive(), {folder_.writeLog("a.resuslog", idOf(1), 60)});
  }
  [[nodiscard]] bool shared() const { return GetParam() == Engine::server; }

  std::string plan(const QString& sql, const QVariantList& values) {
    Database database(folder_.place(), Access::read);
    if (shared()) {
      // One record needs no index; asked not to do without, the planner shows whether there is one.
      database.run(QStringLiteral("SET enable_seqscan = off"));
      database.run(QStringLiteral("SET enable_sort = off"));
      database.run(QStringLiteral("SET enable_bitmapscan = off"));
    }
    QSqlQuery step =
        database.run(shared() ? QStringLiteral("EXPLAIN ") + withValues(sql, values)
                              : QStringLiteral("EXPLAIN QUERY PLAN ") + withValues(sql, values));
    std::string words;
    while (step.next()) {
      words += step.value(shared() ? 0 : 3).toString().toStdString() + "\n";
    }
    return words;
  }
  static QString withValues(QString sql, const QVariantList& values) {
    for (const QVariant& value : values) {
      const QString text = value.toString();
      sql.replace(sql.indexOf(QLatin1Char('?')), 1,
                  value.typeId() == QMetaType::QString
                      ? QLatin1Char('\'') + text + QLatin1Char('\'')
                      : text);
    }
    return sql;
  }
  /// Neither a whole table read through nor rows sorted.
  static void expectDirect(const std::string& plan) {
    EXPECT_THAT(plan, Not(HasSubstr("SCAN"))) << plan;
    EXPECT_THAT(plan, Not(HasSubstr("Seq Scan"))) << plan;
    EXPECT_THAT(plan, Not(HasSubstr("TEMP B-TREE"))) << plan;
    EXPECT_THAT(plan, Not(HasSubstr("Sort"))) << plan;
  }
  ArchiveFolder folder_{GetParam()};
};

INSTANTIATE_TEST_SUITE_P(Both, Plans, ::testing::Values(Engine::file, Engine::server),
                         [](const auto& each) { return words(each.param); });

TEST_P(Plans, TheFirstPageComesFromTheIndexByDay) {
  for (const QString& sql : {latestSql(), undatedSql()}) {
    const std::string words = plan(sql, {1, 100});
    EXPECT_THAT(words, HasSubstr("version_by_day")) << sql.toStdString();
    expectDirect(words);
  }
}

TEST_P(Plans, AColumnIsOneRange) {
  const std::string words = plan(columnSql(), {1, 3});
  expectDirect(words);
  EXPECT_THAT(words, HasSubstr(shared() ? "Index Only Scan"
                                        : "USING PRIMARY KEY (making_id=? AND "
                                          "measure_id=?)"));
}

TEST_P(Plans, AFewCellsOfAColumnAreFoundOneByOne) {
  const std::string words = plan(columnSql({1, 2, 3}), {1, 3});
  expectDirect(words);
  EXPECT_THAT(words, HasSubstr(shared() ? "Index Only Scan"
                                        : "USING PRIMARY KEY (making_id=? AND measure_id=? AND "
                                          "version_id=?)"));
}

TEST_P(Plans, AFileIsFoundByItsBytesAndByItsPlace) {
  for (const char* sql :
       {"SELECT id, record_id, current FROM version WHERE sha256 = ? AND part = ?",
        "SELECT record_id FROM version WHERE path = ? AND part = ? ORDER BY number DESC LIMIT 1",
        "SELECT id FROM version WHERE record_id = ? AND +current = ?"}) {
    const bool byOwner = std::string_view(sql).find("record_id =") != std::string_view::npos;
    const std::string words = plan(
        QLatin1String(sql), {byOwner ? QVariant(1) : QVariant(QStringLiteral("x")), QVariant(0)});
    EXPECT_THAT(words, Not(HasSubstr("version_by_day"))) << sql << words;
    EXPECT_THAT(words, Not(HasSubstr("SCAN"))) << sql << words;
    EXPECT_THAT(words, Not(HasSubstr("Seq Scan"))) << sql << words;
  }
}

TEST_P(Plans, AllFactsAreReadInTheOrderTheyLie) {
  const std::string words = plan(allFactsSql(), {1});
  EXPECT_THAT(words, Not(HasSubstr("TEMP B-TREE"))) << words;
}

} // namespace
} // namespace afterbeat::archive
