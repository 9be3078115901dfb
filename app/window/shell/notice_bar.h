/// One sentence over everything else, until it is read: what went wrong, or what was done.
#pragma once

#include <QWidget>

class QAction;
class QLabel;
class QToolButton;

namespace afterbeat::window {

class NoticeBar final : public QWidget {
  Q_OBJECT

public:
  enum class Kind { done, hint, problem };

  explicit NoticeBar(QWidget* parent = nullptr);
  void say(const QString& sentence, Kind kind = Kind::hint);
  /// Says that a file was written, and offers to open it or its folder.
  void sayWritten(const QString& sentence, const QString& path);
  [[nodiscard]] QString text() const;
  [[nodiscard]] Kind kind() const { return kind_; }
  [[nodiscard]] QAction* dismiss() const { return dismiss_; }
  [[nodiscard]] QToolButton* openButton() const { return open_; }
  [[nodiscard]] QToolButton* folderButton() const { return folder_; }

signals:
  /// A file or folder is wanted in the program that the desktop has for it.
  void wanted(const QString& path);

protected:
  void changeEvent(QEvent* event) override;

private:
  void showSign();

  QLabel *sign_, *text_;
  QToolButton *open_, *folder_;
  QAction* dismiss_;
  QString path_;
  Kind kind_ = Kind::hint;
};

} // namespace afterbeat::window
