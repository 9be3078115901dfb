/// Light, dark or as the system has it; and the size of the type.
#pragma once

#include <QList>
#include <QObject>

class QAction;
class QActionGroup;

namespace afterbeat::window {

/// Sets palette and font of the whole program, and remembers what the user chose.
class Appearance final : public QObject {
  Q_OBJECT

public:
  enum class Mode { system, light, dark };

  explicit Appearance(QObject* parent = nullptr);
  [[nodiscard]] Mode mode() const { return mode_; }
  void setMode(Mode mode);
  /// Steps of a tenth; 0 is the normal size.
  void setTypeStep(int step);
  [[nodiscard]] const QList<QAction*>& modeActions() const { return modeActions_; }
  [[nodiscard]] const QList<QAction*>& typeActions() const { return typeActions_; }

protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

private:
  void applyPalette();
  void applyFont();
  void addMode(const QString& text, const QKeySequence& key, Mode mode);
  void addType(const QString& text, const QList<QKeySequence>& keys, int change);

  Mode mode_ = Mode::system;
  int typeStep_ = 0;
  QActionGroup* group_;
  QList<QAction*> modeActions_, typeActions_;
};

} // namespace afterbeat::window
