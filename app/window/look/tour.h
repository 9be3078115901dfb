/// Shows the window's places one after another as a script says, and takes their pictures. The
/// pictures are taken from the screen, menus and dialogs included.
#pragma once

#include <QImage>
#include <QObject>
#include <QStringList>
#include <QTimer>

class QAction;
class QFileDialog;

namespace afterbeat::window {

class MainWindow;

/// One step a line; `#` begins a remark:
///
///     size WIDTH HEIGHT   of the window, at the corner of the screen
///     open FILE           and wait until its picture is complete
///     start FILE          the same without waiting
///     do KEY              what the menus list under that key
///     figures KEY         the same, and wait for the figures to be computed again
///     click NAME          the button whose accessible name begins so
///     await CLASS         wait until a widget of that class is in view ("NoticeBar")
///     season              wait until all records are there, in their order, and what is in view
///                         is made of them
///     latest              wait until the latest records alone are in view
///     press KEY           in the control that has the keyboard
///     focus NAME          give the keyboard to the control with that accessible name
///     menu N [M]          open the Nth menu, and in it the Mth submenu
///     answer FILE         to the file dialog in front
///     shot FILE           when the screen has come to rest
///     glance FILE         the same at once, for what never rests
///     back                close what is in front: menu or dialog
///
/// The program ends after the last step; with status 4 and a sentence when a step cannot be done.
class Tour final : public QObject {
  Q_OBJECT

public:
  Tour(MainWindow& window, const QString& script, QObject* parent);

private:
  void next();
  /// Whether the step is done; false: it is tried again.
  bool step(const QString& word, const QString& argument);
  void fail(const QString& why);
  bool resize(const QString& size);
  bool open(const QString& file);
  bool trigger(const QString& key);
  bool triggerAndWait(const QString& key);
  bool await(const QString& name);
  bool seasonShown(const QString&);
  bool latestShown(const QString&);
  bool click(const QString& name);
  bool press(const QString& key);
  bool focus(const QString& name);
  bool openMenu(const QString& numbers);
  bool answer(const QString& file);
  bool shoot(const QString& file);
  bool glance(const QString& file);
  static void keep(const QString& file, const QImage& picture);
  [[nodiscard]] QImage screen() const;
  bool goBack();
  [[nodiscard]] QAction* actionFor(const QString& key) const;

  MainWindow& window_;
  QStringList steps_;
  QTimer tick_;
  /// Counted since the step began.
  int pictures_ = 0, figures_ = 0, tries_ = 0;
  bool begun_ = false;
  QImage last_;
  int atRest_ = 0;
};

} // namespace afterbeat::window
