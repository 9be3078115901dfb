#include "app/archive/season_rows.h"

#include <algorithm>
#include <array>

#include <sys/resource.h>
#include <unistd.h>

namespace afterbeat::archive {

namespace {

const QString kFactColumns = QStringLiteral(
    "SELECT v.id, r.name, v.file, v.kind, v.site, v.team, v.device, v.day, v.synthetic, v.number, "
    "c.evidence, c.had_shock, c.longest_cause, c.setting_differs "
    "FROM version v JOIN record r ON r.id = v.record_id "
    "LEFT JOIN computed c ON c.making_id = ? AND c.version_id = v.id WHERE ");

Evidence evidenceFrom(const std::string& word) {
  for (const Evidence one : {Evidence::compressions, Evidence::segments, Evidence::both}) {
    if (word == name(one)) {
      return one;
    }
  }
  return Evidence::none;
}

std::optional<PauseCause> causeFrom(const std::string& word) {
  for (int i = 0; i <= static_cast<int>(PauseCause::noReasonRecorded); ++i) {
    if (word == name(static_cast<PauseCause>(i))) {
      return static_cast<PauseCause>(i);
    }
  }
  return std::nullopt;
}

RecordFacts factsFrom(const QSqlQuery& row) {
  RecordFacts facts;
  facts.number = row.value(0).toLongLong();
  facts.id = row.value(1).toString().toStdString();
  if (facts.id.starts_with("sha256:")) {
    facts.id.clear(); // the archive's own name for a record without an id
  }
  facts.file = row.value(2).toString().toStdString();
  facts.kind = recordKindFrom(row.value(3).toString().toStdString());
  facts.site = row.value(4).toString().toStdString();
  facts.team = row.value(5).toString().toStdString();
  facts.device = row.value(6).toString().toStdString();
  if (const QVariant day = row.value(7); !day.isNull()) {
    facts.day = std::chrono::sys_days{std::chrono::days{day.toInt()}};
  }
  facts.synthetic = row.value(8).toInt() != 0;
  facts.version = row.value(9).toInt();
  facts.hasFigures = !row.value(10).isNull();
  facts.evidence = evidenceFrom(row.value(10).toString().toStdString());
  if (const QVariant shock = row.value(11); !shock.isNull()) {
    facts.hadShock = shock.toInt() != 0;
  }
  if (const QVariant cause = row.value(12); !cause.isNull()) {
    facts.longestPauseCause = causeFrom(cause.toString().toStdString());
  }
  facts.settingDiffers = row.value(13).toInt() != 0;
  return facts;
}

/// What the views of a season ask for, in about the reverse of their order: a view that is opened
/// at once fetches from the other end, and both meet in the middle.
constexpr std::array kAskedFirst{
    // Where the time goes, and worth a look
    MeasureId::electrodesToFirstAnalysis,
    MeasureId::powerOnToFirstHandsOn,
    MeasureId::powerOnToElectrodes,
    MeasureId::powerOnToFirstShock,
    MeasureId::firstHandsOnToFirstShock,
    MeasureId::adviceToShockWorst,
    MeasureId::collapseToFirstHandsOn,
    MeasureId::ventilationsPerMinute,
    MeasureId::collapseToFirstShock,
    MeasureId::compressionDepth,
    MeasureId::electrodesToFirstShock,
    MeasureId::compressionRate,
    MeasureId::callToFirstShock,
    MeasureId::chestCompressionFraction,
    MeasureId::callToFirstHandsOn,
    MeasureId::postShockPauseWorst,
    MeasureId::callToDeviceArrived,
    MeasureId::shocksWithheld,
    MeasureId::longestPause,
    MeasureId::preShockPauseWorst,
};

} // namespace

bool earlier(const RecordFacts& a, const RecordFacts& b) {
  if (a.day.has_value() != b.day.has_value()) {
    return a.day.has_value();
  }
  return a.day == b.day ? a.number < b.number : *a.day < *b.day;
}

QString latestSql() {
  // Two halves, so that each walks the index from its end whatever the database thinks of nulls.
  return kFactColumns +
         QStringLiteral(
             "v.current = 1 AND v.day IS NOT NULL ORDER BY v.current DESC, v.day DESC, v.id DESC "
             "LIMIT ?");
}

QString undatedSql() {
  return kFactColumns + QStringLiteral("v.current = 1 AND v.day IS NULL ORDER BY v.current DESC, "
                                       "v.day DESC, v.id DESC LIMIT ?");
}

QString allFactsSql() {
  // Nearly all are wanted: in the order they lie, not by an index (which the plus keeps away).
  return kFactColumns + QStringLiteral("+v.current = 1");
}

QString columnSql() {
  return QStringLiteral("SELECT version_id, value, part_of FROM figure "
                        "WHERE making_id = ? AND measure_id = ?");
}

QString columnSql(const std::vector<std::int64_t>& numbers) {
  QStringList words;
  for (const std::int64_t number : numbers) {
    words << QString::number(number);
  }
  return columnSql() + QStringLiteral(" AND version_id IN (%1)").arg(words.join(QLatin1Char(',')));
}

void sortByDay(std::vector<RecordFacts>& records) {
  std::sort(records.begin(), records.end(), earlier);
}

std::vector<RecordFacts> readFacts(Database& database, std::int64_t making, std::size_t limit) {
  std::vector<RecordFacts> facts;
  const auto take = [&facts](QSqlQuery rows) {
    while (rows.next()) {
      facts.push_back(factsFrom(rows));
    }
  };
  if (limit == 0) {
    take(database.run(allFactsSql(), {qlonglong{making}}));
    return facts;
  }
  take(database.run(latestSql(), {qlonglong{making}, static_cast<qlonglong>(limit)}));
  if (facts.size() < limit) {
    take(database.run(undatedSql(),
                      {qlonglong{making}, static_cast<qlonglong>(limit - facts.size())}));
  }
  return facts;
}

ColumnShelf::ColumnShelf(ArchivePlace place, std::int64_t making,
                         const std::vector<RecordFacts>& records, bool few)
    : place_(std::move(place)), making_(making), size_(records.size()) {
  std::int64_t last = -1;
  std::vector<std::int64_t> numbers;
  for (const RecordFacts& one : records) {
    last = std::max(last, one.number);
    if (few) {
      numbers.push_back(one.number);
    }
  }
  ahead_ = !few && !place_.shared;
  sql_ = few ? columnSql(numbers) : columnSql();
  places_.assign(static_cast<std::size_t>(last + 1), -1);
  for (std::size_t i = 0; i < records.size(); ++i) {
    places_[static_cast<std::size_t>(records[i].number)] = static_cast<std::int32_t>(i);
  }
}

ColumnShelf::~ColumnShelf() {
  stop_ = true;
  if (thread_.joinable()) {
    thread_.join();
  }
}

std::size_t ColumnShelf::ready() {
  const std::scoped_lock lock(mutex_);
  return columns_.size();
}

const FigureColumn& ColumnShelf::column(MeasureId id) {
  std::unique_lock lock(mutex_);
  done_.wait(lock, [&] { return !begun_.contains(id); });
  if (const auto there = columns_.find(id); there != columns_.end()) {
    return *there->second;
  }
  begun_.insert(id);
  if (ahead_ && !thread_.joinable()) {
    thread_ = std::thread([this] { fetchAhead(); });
  }
  lock.unlock();
  std::unique_ptr<const FigureColumn> fetched;
  try {
    fetched = fetch(id, false);
  } catch (...) {
    lock.lock();
    begun_.erase(id);
    done_.notify_all();
    throw;
  }
  lock.lock();
  const FigureColumn& column = *(columns_[id] = std::move(fetched));
  begun_.erase(id);
  done_.notify_all();
  return column;
}

/// Whether nobody has it or fetches it; then it counts as begun.
bool ColumnShelf::begin(MeasureId id) {
  const std::scoped_lock lock(mutex_);
  return !columns_.contains(id) && begun_.insert(id).second;
}

void ColumnShelf::fetchAhead() {
  // Of this thread alone.
  setpriority(PRIO_PROCESS, static_cast<id_t>(gettid()), 10);
  std::vector<MeasureId> order(kAskedFirst.begin(), kAskedFirst.end());
  for (std::size_t i = 0; i < static_cast<std::size_t>(MeasureId::count_); ++i) {
    order.push_back(static_cast<MeasureId>(i));
  }
  for (const MeasureId id : order) {
    if (stop_) {
      return;
    }
    if (!begin(id)) {
      continue;
    }
    std::unique_ptr<const FigureColumn> fetched;
    bool failed = false;
    try {
      fetched = fetch(id, true);
    } catch (const ArchiveFailure&) {
      failed = true; // whoever asks for it will be told
    }
    const std::scoped_lock lock(mutex_);
    if (fetched) {
      columns_[id] = std::move(fetched);
    }
    begun_.erase(id);
    done_.notify_all();
    if (failed) {
      return;
    }
  }
}

std::unique_ptr<const FigureColumn> ColumnShelf::fetch(MeasureId id, bool ahead) const {
  Database database(place_, Access::read);
  auto column = std::make_unique<FigureColumn>(size_);
  const bool share = measureInfo(id).unit == "1";
  // Every value that is read of 100 000 rows takes a tenth of the time for all.
  const QString sql = share ? sql_ : QString(sql_).remove(QLatin1String(", part_of"));
  QSqlQuery rows = database.run(
      sql, {qlonglong{making_}, measureNumbers(database)[static_cast<std::size_t>(id)]});
  while (rows.next()) {
    if (ahead && stop_) {
      return nullptr;
    }
    const auto number = static_cast<std::size_t>(rows.value(0).toLongLong());
    // A record that came after the season was read has no place in it.
    if (number >= places_.size() || places_[number] < 0) {
      continue;
    }
    FigureCell& cell = (*column)[static_cast<std::size_t>(places_[number])];
    const QVariant value = rows.value(1);
    cell.status = value.isNull() ? Status::notApplicable : Status::ok;
    cell.value = value.toDouble();
    if (share) {
      cell.of = static_cast<float>(rows.value(2).toDouble());
    }
  }
  return column;
}

} // namespace afterbeat::archive
