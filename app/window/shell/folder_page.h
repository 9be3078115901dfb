/// A folder was dropped or opened: the recordings in it, the newest first, to choose from.
#pragma once

#include "app/window/session/folder.h"
#include "app/window/shell/pages.h"

#include <QThreadPool>

#include <memory>

class QListWidget;

namespace afterbeat::window {

class FolderPage final : public Page {
  Q_OBJECT

public:
  explicit FolderPage(QAction* open, QWidget* parent = nullptr);
  ~FolderPage() override;
  /// Looks through a folder; `chosen` follows at once where it holds a single recording.
  void lookInto(const QString& folder);
  [[nodiscard]] QListWidget* list() const { return list_; }
  [[nodiscard]] QString asText() const;

signals:
  /// The list is complete.
  void listed();
  void chosen(const QString& path);

private:
  void show(const FoundRecordings& found);
  void fitList();

  QLabel *name_, *said_;
  QListWidget* list_;
  std::shared_ptr<std::atomic<bool>> cancelled_;
  /// Last: waits for a search while everything else still stands.
  QThreadPool pool_;
};

} // namespace afterbeat::window
