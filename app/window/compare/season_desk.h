/// The season that is open, which of its records are meant, and in which order.
#pragma once

#include "app/window/compare/latest_work.h"
#include "app/window/compare/season_source.h"
#include "core/compare/filter.h"
#include "core/compare/order.h"

#include <QObject>

#include <optional>

namespace afterbeat::window {

class Session;

/// Chosen records in their order, with the columns that the table shows.
struct Arranged {
  SharedSource source;
  Chosen chosen;
  /// Hold as long as the source.
  std::map<MeasureId, const FigureColumn*> columns;
  /// Of the chosen ones, how many have no value of what they are sorted by: they stand last.
  std::size_t withoutValue = 0;
  /// Of the chosen, those that have no figures under the settings in use.
  std::size_t withoutFigures = 0;
  /// Not 0: these are the latest records alone, of so many that are still being read.
  std::size_t latestOf = 0;
  /// Not empty: the archive could not be read any more, and nothing is chosen.
  QString trouble;
};

/// Belongs to the window's thread; everything that takes long happens on workers.
class SeasonDesk final : public QObject {
  Q_OBJECT

public:
  explicit SeasonDesk(Session& session, QObject* parent = nullptr);
  ~SeasonDesk() override;

  void openFiles(const QStringList& sources);
  /// Of a large archive that was not open yet its latest records are there at once.
  void openArchive(archive::ArchivePlace place);
  /// Takes files in and opens the archive.
  void takeIn(const archive::ArchivePlace& place, const QStringList& sources);
  /// A season that is in memory already.
  void show(SharedSource source);
  void stop();
  [[nodiscard]] bool busy() const { return watch_ != nullptr; }
  /// For tests, which decide what is there first.
  void setReading(ArchiveReading reading) { archives_ = std::move(reading); }
  /// Files that were read, of those found so far.
  [[nodiscard]] std::size_t done() const { return watch_ ? watch_->done.load() : 0; }
  [[nodiscard]] std::size_t found() const { return watch_ ? watch_->found.load() : 0; }

  /// Null: none is open, or it is not read yet.
  [[nodiscard]] const SharedSource& source() const { return source_; }
  /// Of all records. Without a source: they are not there yet.
  [[nodiscard]] const Arranged& arranged() const { return arranged_; }
  /// What a table shows: as `arranged`, but of a large archive its latest records until all are
  /// there. Nothing may be computed from these few.
  [[nodiscard]] const Arranged& shown() const { return latest_.source ? latest_ : arranged_; }
  /// `shown` are the latest records alone.
  [[nodiscard]] bool onlyLatest() const { return latest_.source != nullptr; }
  /// The latest first: the order of a season that was just opened, and of `onlyLatest`.
  [[nodiscard]] static Order latestFirst() { return {Fact::day, true}; }
  [[nodiscard]] const Filter& filter() const { return filter_; }
  void setFilter(const Filter& filter);
  [[nodiscard]] const Order& order() const { return order_; }
  void setOrder(const Order& order);
  /// The archive that is open; empty where it is files.
  [[nodiscard]] const std::optional<archive::ArchivePlace>& place() const { return place_; }
  /// What the last taking-in did.
  [[nodiscard]] const std::optional<archive::TakeInReport>& report() const { return report_; }
  /// Arranging was asked for and is not done yet.
  [[nodiscard]] bool arranging() const { return arranging_.busy(); }
  /// Columns that are always in the table.
  [[nodiscard]] static const std::vector<MeasureId>& usualColumns();

signals:
  void busyChanged();
  /// Another season is open, or none; its records are not arranged yet.
  void sourceChanged();
  /// Other records are `shown`, or in another order.
  void arrangedChanged();
  /// Another filter or order is wanted. With `onlyLatest` it waits for all records.
  void wishChanged();
  /// It could not be read or written; a sentence.
  void failed(const QString& sentence);
  /// The taking-in came to its end; `report` holds.
  void takenIn();

private:
  struct Read {
    tl::expected<SharedSource, QString> source;
    std::optional<archive::ArchivePlace> place;
    std::optional<archive::TakeInReport> report;
  };
  void start(std::function<Read(SeasonWatch&)> work);
  void finish(Read read);
  void readLatestOf(const archive::ArchivePlace& place);
  void showLatest(const archive::ArchivePlace& place, Arranged latest);
  void dropLatest();
  void arrange();
  /// The reader's own words for kinds and causes.
  [[nodiscard]] static FilterWords filterWords();

  Session& session_;
  ArchiveReading archives_;
  SharedSource source_;
  Arranged arranged_, latest_;
  Filter filter_;
  Order order_ = latestFirst();
  QStringList files_;
  std::optional<archive::ArchivePlace> place_;
  std::optional<archive::TakeInReport> report_;
  std::shared_ptr<SeasonWatch> watch_;
  /// Last: their destructors wait for workers.
  LatestWork reading_, readingLatest_, arranging_;
};

/// Why hands were off, in the window's language.
[[nodiscard]] QString causeName(PauseCause cause);

} // namespace afterbeat::window
