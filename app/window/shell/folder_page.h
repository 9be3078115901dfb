/// A folder was dropped or opened: the recordings in it, the newest first, to choose from.
#pragma once

#include "app/window/session/folder.h"
#include "app/window/shell/pages.h"

#include <QThreadPool>

#include <functional>
#include <memory>

class QListWidget;

namespace afterbeat::window {

class FolderPage final : public Page {
  Q_OBJECT

public:
  /// `others`: what can be done instead of choosing one of the list.
  explicit FolderPage(const QList<QAction*>& others, QWidget* parent = nullptr);
  ~FolderPage() override;
  /// Looks through a folder; `chosen` follows at once where it holds a single recording.
  void lookInto(const QString& folder);
  /// Lists files to choose from.
  void lookAt(const QStringList& paths);
  /// The listed paths, as they stand.
  [[nodiscard]] QStringList paths() const;
  /// The marked ones; all of a short list where fewer than two are marked.
  [[nodiscard]] QStringList besideChosen() const;
  [[nodiscard]] QPushButton* openButton() const { return open_; }
  [[nodiscard]] QListWidget* list() const { return list_; }
  [[nodiscard]] QString asText() const;

signals:
  /// The list is complete.
  void listed();
  void chosen(const QString& path);

private:
  void search(const QString& where, std::function<FoundRecordings(const std::atomic<bool>&)> find);
  void openChosen();
  void show(const FoundRecordings& found);
  void fitList();

  QLabel *heading_, *name_, *said_;
  QPushButton* open_;
  QListWidget* list_;
  std::shared_ptr<std::atomic<bool>> cancelled_;
  /// Last: waits for a search while everything else still stands.
  QThreadPool pool_;
};

} // namespace afterbeat::window
