#include "app/window/compare/figures_moved.h"

#include "app/window/compare/archive_words.h"
#include "app/window/compare/beside_words.h"
#include "app/window/compare/season_desk.h"
#include "app/window/finding/list_text.h"
#include "app/window/look/figure_words.h"
#include "app/window/look/look.h"
#include "app/window/tables/table_model.h"

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPointer>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <map>

namespace afterbeat::window {

namespace {

/// Rows that a column is made wide enough for.
constexpr int kMeasured = 60;

QString tr(const char* english) {
  return QCoreApplication::translate("afterbeat::window", english);
}

QString deriveWords(DeriveMode mode) {
  switch (mode) {
  case DeriveMode::automatic:
    return tr("from signals where the device recorded nothing");
  case DeriveMode::never:
    return tr("never from signals");
  case DeriveMode::always:
    return tr("always from signals");
  }
  return {};
}

/// What is another in two makings: "definitions 1 → 2".
QString changeWords(const archive::Making& before, const archive::Making& after) {
  const FigureSettings &was = before.settings.figures, &is = after.settings.figures;
  QStringList parts;
  const auto add = [&parts](const QString& from, const QString& to) {
    if (from != to) {
      parts << QStringLiteral("%1 → %2").arg(from, to);
    }
  };
  if (before.definitions != after.definitions) {
    parts << tr("definitions %1 → %2").arg(before.definitions).arg(after.definitions);
  }
  const auto pauses = [](Duration threshold) {
    return tr("pauses longer than %1 s").arg(words().plainNumber(seconds(threshold)));
  };
  add(pauses(was.pauseThreshold), pauses(is.pauseThreshold));
  add(words()(was.profile.name.c_str()), words()(is.profile.name.c_str()));
  const auto end = [](WindowEnd to) {
    return to == WindowEnd::lastActivity ? tr("to the last activity")
                                         : tr("to the end of the record");
  };
  add(end(was.windowEnd), end(is.windowEnd));
  add(deriveWords(before.settings.derive), deriveWords(after.settings.derive));
  return parts.isEmpty() ? tr("targets of the guideline") : parts.join(QStringLiteral(", "));
}

/// Two figures that would read the same get more digits.
QString exactWords(MeasureId id, const FigureCell& cell) {
  const std::string_view unit = measureInfo(id).unit;
  const QString number = QLocale().toString(cell.value, 'g', 8);
  return unit == "1" ? number
                     : QStringLiteral("%1 %2").arg(
                           number, QString::fromUtf8(unit.data(), static_cast<int>(unit.size())));
}

/// Names of records by their numbers: those of the season, others from the archive.
class Names {
public:
  Names(const archive::Archive& archive, const Season& season) : archive_(archive) {
    for (const RecordFacts& facts : season.records) {
      names_.emplace(facts.number, QString::fromStdString(facts.file));
    }
  }
  const QString& of(std::int64_t number) {
    auto at = names_.find(number);
    if (at == names_.end()) {
      const auto file = archive_.file(number);
      at = names_
               .emplace(number, file ? QString::fromStdU16String(file->path.filename().u16string())
                                     : QString())
               .first;
    }
    return at->second;
  }

private:
  const archive::Archive& archive_;
  std::map<std::int64_t, QString> names_;
};

TableRow rowOf(const archive::Moved& one, const QString& name, const QString& change) {
  QString before = cellWords(one.measure, one.before), after = cellWords(one.measure, one.after);
  if (before == after) {
    before = exactWords(one.measure, one.before);
    after = exactWords(one.measure, one.after);
  }
  TableRow row;
  row.what = name;
  row.cells = {{name, std::nullopt, true},
               {titleWords(one.measure), std::nullopt, true},
               {before, std::nullopt, one.before.status != Status::notRecorded},
               {after, std::nullopt, one.after.status != Status::notRecorded},
               {change, std::nullopt, true}};
  return row;
}

} // namespace

MovedFound findMoved(const archive::ArchivePlace& place, const SharedSource& source) {
  MovedFound found;
  const auto failed = [&found](const archive::ArchiveError& error) {
    found.sentence = archiveWords(error);
    found.content.rows.clear();
    return found;
  };
  const auto opened = archive::Archive::open(place);
  const auto makings = opened ? opened->makings() : tl::unexpected(opened.error());
  if (!makings) {
    return failed(makings.error());
  }
  for (const QString& title :
       {tr("Record"), tr("Figure"), tr("Before"), tr("Now"), tr("What was changed")}) {
    found.content.columns.push_back({title, {}, false});
  }
  const auto pairs = archive::pairsToCompare(*makings);
  Names names(*opened, source->season());
  for (const archive::MakingPair& pair : pairs) {
    const auto moved = opened->moved(pair.before.id, pair.after.id);
    if (!moved) {
      return failed(moved.error());
    }
    const QString change = changeWords(pair.before, pair.after);
    for (const archive::Moved& one : *moved) {
      found.content.rows.push_back(rowOf(one, names.of(one.number), change));
    }
  }
  if (pairs.empty()) {
    found.sentence = tr("All figures of this archive were made in one way, with one version of the "
                        "definitions: there is nothing to set against them.");
  } else if (found.content.rows.empty()) {
    found.sentence = tr("The archive holds figures made in more than one way, and they are all the "
                        "same.");
  } else {
    found.sentence = tr("The archive holds figures made in more than one way. Figures that "
                        "changed: %1.")
                         .arg(words().number(static_cast<double>(found.content.rows.size())));
  }
  return found;
}

MovedDialog::MovedDialog(QWidget* parent)
    : QDialog(parent), sentence_(new QLabel(this)), view_(new QTableView(this)),
      model_(new TableModel(this)) {
  setWindowTitle(tr("Figures that changed"));
  resize(480, 120);
  sentence_->setWordWrap(true);
  sentence_->setTextFormat(Qt::PlainText);
  sentence_->setText(tr("The archive is being asked…"));
  auto* sorting = new TableSorting(this);
  sorting->setSourceModel(model_);
  view_->setModel(sorting);
  view_->setAccessibleName(windowTitle());
  view_->setSelectionBehavior(QAbstractItemView::SelectRows);
  view_->setTabKeyNavigation(false);
  view_->setWordWrap(false);
  view_->setShowGrid(false);
  view_->setAlternatingRowColors(true);
  view_->verticalHeader()->hide();
  view_->horizontalHeader()->setHighlightSections(false);
  view_->horizontalHeader()->setStretchLastSection(true);
  view_->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
  view_->setSortingEnabled(true);
  view_->hide();
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
  QPushButton* copy = buttons->addButton(tr("Copy as text"), QDialogButtonBox::ActionRole);
  copy->setShortcut(QKeySequence::Copy);
  copy->setToolTip(copy->shortcut().toString(QKeySequence::NativeText));
  connect(copy, &QPushButton::clicked, this,
          [this] { QApplication::clipboard()->setText(tabbedText(*view_)); });
  copy->setVisible(false);
  copy_ = copy;
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
  auto* down = new QVBoxLayout(this);
  down->addWidget(sentence_);
  down->addWidget(view_, 1);
  down->addStretch();
  down->addWidget(buttons);
}

void MovedDialog::tell(const MovedFound& found) {
  sentence_->setText(found.sentence);
  const bool any = !found.content.rows.empty();
  model_->show(found.content);
  view_->setVisible(any);
  copy_->setVisible(any);
  view_->verticalHeader()->setDefaultSectionSize(view_->fontMetrics().height() + 10);
  view_->horizontalHeader()->setResizeContentsPrecision(kMeasured);
  view_->resizeColumnsToContents();
  if (any) {
    resize(860, 480);
    view_->setCurrentIndex(view_->model()->index(0, 0));
    view_->setFocus(Qt::OtherFocusReason);
  }
}

QString MovedDialog::sentence() const {
  return sentence_->text();
}

FiguresMoved::FiguresMoved(SeasonDesk& desk, QWidget* window)
    : QObject(window), desk_(desk), window_(window),
      action_(new QAction(tr("Figures that cha&nged…"), this)), work_(*this) {
  action_->setShortcut(Qt::SHIFT | Qt::Key_V);
  action_->setEnabled(false);
  connect(action_, &QAction::triggered, this, &FiguresMoved::ask);
  connect(&desk_, &SeasonDesk::sourceChanged, this,
          [this] { action_->setEnabled(desk_.place().has_value()); });
}

void FiguresMoved::ask() {
  if (!desk_.place() || !desk_.source()) {
    return;
  }
  auto* dialog = new MovedDialog(window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
  work_.ask([place = *desk_.place(), source = desk_.source()] { return findMoved(place, source); },
            [dialog = QPointer<MovedDialog>(dialog)](const MovedFound& found) {
              if (dialog) {
                dialog->tell(found);
              }
            });
}

} // namespace afterbeat::window
