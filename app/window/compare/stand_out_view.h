/// Worth a look: records whose figures stand out, each with its reasons in words.
#pragma once

#include "app/window/compare/season_desk.h"

#include <QWidget>

class QLabel;
class QTreeWidget;

namespace afterbeat::window {

/// Enter opens a record. No place and no team is named for what its records show.
class StandOutView final : public QWidget {
  Q_OBJECT

public:
  /// More are counted, not listed.
  static constexpr std::size_t kMostShown = 200;

  explicit StandOutView(SeasonDesk& desk, QWidget* parent = nullptr);
  [[nodiscard]] QTreeWidget* list() const { return list_; }
  [[nodiscard]] QString sentence() const;
  [[nodiscard]] bool upToDate() const { return !outdated_ && !work_.busy(); }

signals:
  void wanted(std::uint32_t place);
  void drawn();

protected:
  void showEvent(QShowEvent* event) override;

private:
  struct Line {
    std::uint32_t place = 0;
    QString record, reasons;
  };
  struct Found {
    std::vector<Line> lines;
    std::size_t all = 0, of = 0;
    /// What holds for so many records that it names none.
    QStringList usual;
    QString refusal;
  };
  [[nodiscard]] static Found find(const SharedSource& source, const Chosen& chosen);
  void refresh();
  void deliver(const Found& found);

  SeasonDesk& desk_;
  QLabel* sentence_;
  QTreeWidget* list_;
  bool outdated_ = true;
  /// Last: waits for its worker.
  LatestWork work_;
};

} // namespace afterbeat::window
