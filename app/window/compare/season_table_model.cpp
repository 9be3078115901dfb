#include "app/window/compare/season_table_model.h"

#include "app/papers/said.h"
#include "app/window/compare/beside_words.h"
#include "app/window/compare/sketch_paint.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"

#include <QBrush>
#include <QCoreApplication>
#include <QDate>
#include <QGuiApplication>
#include <QLocale>

#include <algorithm>
#include <utility>

namespace afterbeat::window {

namespace {

/// So many small pictures are kept; they are fetched again when they are seen again.
constexpr std::size_t kMostSketches = 4096;

/// Broken at the space nearest to its middle, so that a long title makes no wide column.
QString inTwoLines(QString title) {
  constexpr qsizetype kShort = 9;
  const qsizetype middle = title.size() / 2;
  const qsizetype before = title.lastIndexOf(QLatin1Char(' '), middle);
  const qsizetype after = title.indexOf(QLatin1Char(' '), middle);
  const bool first = after < 0 || (before > 0 && middle - before < after - middle);
  const qsizetype at = first ? before : after;
  if (title.size() > kShort && at > 0) {
    title[at] = QLatin1Char('\n');
  }
  return title;
}

/// The latest records alone are the first of all of them.
bool beginsWith(const Arranged& all, const Arranged& latest) {
  return latest.latestOf > 0 && all.latestOf == 0 && all.chosen.size() >= latest.chosen.size() &&
         std::equal(latest.chosen.begin(), latest.chosen.end(), all.chosen.begin(),
                    [&](std::uint32_t one, std::uint32_t other) {
                      return latest.source->season().records[one].number ==
                             all.source->season().records[other].number;
                    });
}

/// Before words that stand right of a number.
const QString kGap = QStringLiteral("\u2003");

/// As few words as the column's head leaves open; the tooltip has them in full.
QString shortCause(const RecordFacts& facts) {
  if (!facts.longestPauseCause) {
    return factWords(Fact::longestPauseCause, facts);
  }
  switch (*facts.longestPauseCause) {
  case PauseCause::shock:
    return SeasonTableModel::tr("shock", "cause of the longest pause");
  case PauseCause::analysis:
    return SeasonTableModel::tr("analysis", "cause of the longest pause");
  case PauseCause::beforeFirst:
    return SeasonTableModel::tr("at the begin", "cause of the longest pause");
  case PauseCause::afterLast:
    return SeasonTableModel::tr("at the end", "cause of the longest pause");
  case PauseCause::breaths:
    return SeasonTableModel::tr("breaths", "cause of the longest pause");
  case PauseCause::breathsLong:
    return SeasonTableModel::tr("long breaths", "cause of the longest pause");
  case PauseCause::noReasonRecorded:
    return SeasonTableModel::tr("no reason", "cause of the longest pause");
  }
  return {};
}

QString orNotRecorded(const std::string& text) {
  return text.empty() ? SeasonTableModel::tr("not recorded") : papers::plainText(text);
}

} // namespace

QString factTitle(Fact fact) {
  switch (fact) {
  case Fact::day:
    return SeasonTableModel::tr("Day");
  case Fact::site:
    return SeasonTableModel::tr("Site");
  case Fact::team:
    return SeasonTableModel::tr("Team");
  case Fact::device:
    return SeasonTableModel::tr("Device");
  case Fact::file:
    return SeasonTableModel::tr("File");
  case Fact::id:
    return SeasonTableModel::tr("Id");
  case Fact::kind:
    return SeasonTableModel::tr("Kind");
  case Fact::evidence:
    return SeasonTableModel::tr("Made from");
  case Fact::hadShock:
    return SeasonTableModel::tr("Had a shock");
  case Fact::longestPauseCause:
    return SeasonTableModel::tr("Longest pause was");
  case Fact::version:
    return SeasonTableModel::tr("Version");
  }
  return {};
}

QString factWords(Fact fact, const RecordFacts& facts) {
  switch (fact) {
  case Fact::day:
    return facts.day ? QLocale().toString(
                           QDate(1970, 1, 1).addDays(facts.day->time_since_epoch().count()),
                           QStringLiteral("yyyy-MM-dd"))
                     : SeasonTableModel::tr("not recorded");
  case Fact::site:
    return orNotRecorded(facts.site);
  case Fact::team:
    return orNotRecorded(facts.team);
  case Fact::device:
    return orNotRecorded(facts.device);
  case Fact::file:
    return facts.version > 1 ? SeasonTableModel::tr("%1 (changed, version %2)")
                                   .arg(papers::plainText(facts.file))
                                   .arg(facts.version)
                             : papers::plainText(facts.file);
  case Fact::id:
    return orNotRecorded(facts.id);
  case Fact::kind:
    return kindMarks(facts.kind, facts.synthetic);
  case Fact::evidence:
    return !facts.hasFigures ? SeasonTableModel::tr("no figures")
                             : QString::fromUtf8(name(facts.evidence).data());
  case Fact::hadShock:
    return !facts.hasFigures ? SeasonTableModel::tr("no figures")
           : !facts.hadShock ? SeasonTableModel::tr("not recorded")
           : *facts.hadShock ? SeasonTableModel::tr("yes")
                             : SeasonTableModel::tr("no");
  case Fact::longestPauseCause:
    if (facts.longestPauseCause) {
      return causeName(*facts.longestPauseCause);
    }
    return !facts.hasFigures                  ? SeasonTableModel::tr("no figures")
           : facts.evidence == Evidence::none ? SeasonTableModel::tr("not recorded")
                                              : SeasonTableModel::tr("no pause");
  case Fact::version:
    return QString::number(facts.version);
  }
  return {};
}

SeasonTableModel::SeasonTableModel(SeasonDesk& desk, QObject* parent)
    : QAbstractTableModel(parent), desk_(desk), work_(*this) {
  connect(&desk_, &SeasonDesk::arrangedChanged, this, &SeasonTableModel::arrange);
  connect(&desk_, &SeasonDesk::sourceChanged, this, [this] {
    // The latest records stay until all of them are arranged.
    if (!desk_.shown().source) {
      arrange();
    }
  });
}

void SeasonTableModel::arrange() {
  beginResetModel();
  const Arranged before = std::exchange(shown_, desk_.shown());
  linesStayed_ = beginsWith(shown_, before);
  if (shown_.source != before.source) {
    keepSketches(before);
  }
  columns_.clear();
  const auto add = [this](auto what) { columns_.push_back({what}); };
  add(Fact::day);
  columns_.push_back({std::nullopt});
  add(Fact::site);
  add(Fact::team);
  add(Fact::kind);
  const auto& usual = SeasonDesk::usualColumns();
  // What they are sorted by is in view.
  if (const auto* id = std::get_if<MeasureId>(&desk_.order().by);
      id && std::find(usual.begin(), usual.end(), *id) == usual.end()) {
    add(*id);
  }
  for (const MeasureId one : usual) {
    add(one);
  }
  add(Fact::longestPauseCause);
  add(Fact::file);
  endResetModel();
}

/// Small pictures go by places in the season; those of lines that stayed are known under new ones.
void SeasonTableModel::keepSketches(const Arranged& before) {
  auto old = std::exchange(sketches_, {});
  wanted_.clear();
  work_.forget();
  for (std::size_t i = 0; linesStayed_ && i < before.chosen.size(); ++i) {
    if (auto sketch = old.extract(before.chosen[i])) {
      sketches_.emplace(shown_.chosen[i], std::move(sketch.mapped()));
    }
  }
}

int SeasonTableModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(shown_.chosen.size());
}

int SeasonTableModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(columns_.size());
}

std::uint32_t SeasonTableModel::place(int row) const {
  return shown_.chosen[static_cast<std::size_t>(row)];
}

std::optional<std::variant<Fact, MeasureId>> SeasonTableModel::sorts(int column) const {
  return column >= 0 && column < columnCount() ? columns_[static_cast<std::size_t>(column)].what
                                               : std::nullopt;
}

QString SeasonTableModel::title(const Column& column) const {
  if (!column.what) {
    return tr("Rows");
  }
  if (const auto* fact = std::get_if<Fact>(&*column.what)) {
    return factTitle(*fact);
  }
  return titleWords(std::get<MeasureId>(*column.what));
}

QString SeasonTableModel::text(const Column& column, std::uint32_t place) const {
  if (!column.what) {
    return {};
  }
  if (const auto* fact = std::get_if<Fact>(&*column.what)) {
    return factWords(*fact, shown_.source->season().records[place]);
  }
  if (!shown_.source->season().records[place].hasFigures) {
    return tr("no figures");
  }
  const MeasureId id = std::get<MeasureId>(*column.what);
  const auto cells = shown_.columns.find(id);
  return cells == shown_.columns.end() ? QString() : cellWords(id, (*cells->second)[place]);
}

QVariant SeasonTableModel::data(const QModelIndex& index, int role) const {
  const Column& column = columns_[static_cast<std::size_t>(index.column())];
  const std::uint32_t there = place(index.row());
  const bool measure = column.what && std::holds_alternative<MeasureId>(*column.what);
  switch (role) {
  case Qt::DisplayRole:
    if (column.what == std::variant<Fact, MeasureId>(Fact::longestPauseCause)) {
      return kGap + shortCause(shown_.source->season().records[there]);
    }
    return text(column, there);
  case Qt::ToolTipRole:
  case Qt::AccessibleTextRole: {
    if (column.what) {
      return QStringLiteral("%1: %2").arg(title(column), text(column, there));
    }
    const archive::RowsSketch* rows = sketch(there);
    return rows ? tr("Small picture of the rows: %1").arg(sketchWords(*rows))
                : tr("Small picture of the rows");
  }
  case Qt::TextAlignmentRole:
    return QVariant::fromValue(
        Qt::Alignment((measure ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter));
  case Qt::ForegroundRole:
    if (measure) {
      const auto cells = shown_.columns.find(std::get<MeasureId>(*column.what));
      if (cells != shown_.columns.end() && !(*cells->second)[there].ok()) {
        return QBrush(Look::of(QGuiApplication::palette(), QGuiApplication::font()).faintInk);
      }
    }
    return {};
  case kSketchRole:
    return column.what ? QVariant() : QVariant::fromValue(static_cast<const void*>(sketch(there)));
  default:
    return {};
  }
}

QString SeasonTableModel::about(const Column& column) {
  if (!column.what) {
    return tr("Small picture of each record, a quarter of an hour from edge to edge: hands on in "
              "colour, pauses as gaps, shocks as flags, circulation that returned as a line");
  }
  const auto* id = std::get_if<MeasureId>(&*column.what);
  return id ? definitionWords(*id) + QLatin1Char('\n') + tr("Sort by this") : tr("Sort by this");
}

QVariant SeasonTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal || section >= columnCount()) {
    return {};
  }
  const Column& column = columns_[static_cast<std::size_t>(section)];
  switch (role) {
  case Qt::DisplayRole:
    if (column.what == std::variant<Fact, MeasureId>(Fact::longestPauseCause)) {
      return kGap + inTwoLines(title(column)).replace(QLatin1Char('\n'), QLatin1Char('\n') + kGap);
    }
    return inTwoLines(title(column));
  case Qt::AccessibleTextRole:
    return title(column);
  case Qt::ToolTipRole:
    return about(column);
  case Qt::TextAlignmentRole:
    return QVariant::fromValue(Qt::Alignment(
        (column.what && std::holds_alternative<MeasureId>(*column.what) ? Qt::AlignRight
                                                                        : Qt::AlignLeft) |
        Qt::AlignVCenter));
  default:
    return {};
  }
}

const archive::RowsSketch* SeasonTableModel::sketch(std::uint32_t place) const {
  const auto found = sketches_.find(place);
  if (found != sketches_.end()) {
    return &found->second;
  }
  wanted_.insert(place);
  if (!asked_) {
    asked_ = true;
    QMetaObject::invokeMethod(
        const_cast<SeasonTableModel*>(this), [this] { fetchSketches(); }, Qt::QueuedConnection);
  }
  return nullptr;
}

void SeasonTableModel::fetchSketches() const {
  asked_ = false;
  if (work_.busy() || wanted_.empty() || !shown_.source) {
    return;
  }
  if (sketches_.size() > kMostSketches) {
    sketches_.clear();
  }
  const std::vector<std::uint32_t> places(wanted_.begin(), wanted_.end());
  wanted_.clear();
  work_.ask([source = shown_.source, places] { return source->sketches(places); },
            [this, places](std::map<std::uint32_t, archive::RowsSketch> got) {
              for (const std::uint32_t place : places) {
                // Those without a picture are not asked for again.
                sketches_[place] = std::move(got[place]);
              }
              if (rowCount() > 0) {
                auto* self = const_cast<SeasonTableModel*>(this);
                emit self->dataChanged(index(0, sketchColumn()),
                                       index(rowCount() - 1, sketchColumn()), {kSketchRole});
              }
              fetchSketches();
            });
}

} // namespace afterbeat::window
