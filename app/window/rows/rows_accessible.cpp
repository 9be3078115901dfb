/// The rows as readers of the screen see them: a list with one entry for each row.
#include "app/window/rows/rows_canvas.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QPointer>

#include <map>

namespace afterbeat::window {

namespace {

/// One row: its text, its place, and whether the selection is in it.
class RowEntry final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
  RowEntry(RowsCanvas* canvas, int index) : canvas_(canvas), index_(index) {}

  [[nodiscard]] bool isValid() const override {
    return canvas_ != nullptr && index_ < canvas_->rowCount();
  }
  [[nodiscard]] QObject* object() const override { return nullptr; }
  [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
  [[nodiscard]] QAccessibleInterface* parent() const override {
    return QAccessible::queryAccessibleInterface(canvas_);
  }
  [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
  [[nodiscard]] int childCount() const override { return 0; }
  [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
  [[nodiscard]] QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Name && isValid() ? canvas_->rowText(index_) : QString();
  }
  void setText(QAccessible::Text, const QString&) override {}
  [[nodiscard]] QRect rect() const override {
    const QRect box = isValid() ? canvas_->rowRect(index_) : QRect();
    return box.isEmpty() ? QRect() : QRect(canvas_->mapToGlobal(box.topLeft()), box.size());
  }
  [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
  [[nodiscard]] QAccessible::State state() const override {
    QAccessible::State state;
    if (!isValid()) {
      state.invalid = true;
      return state;
    }
    const bool current = canvas_->currentRow() == index_;
    state.selectable = state.focusable = state.readOnly = true;
    state.selected = current;
    state.focused = current && canvas_->hasFocus();
    state.offscreen = !canvas_->visibleRegion().intersects(canvas_->rowRect(index_));
    return state;
  }
  void* interface_cast(QAccessible::InterfaceType type) override {
    return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this)
                                                : nullptr;
  }
  [[nodiscard]] QStringList actionNames() const override { return {pressAction()}; }
  void doAction(const QString& name) override {
    if (isValid() && name == pressAction()) {
      canvas_->selectRow(index_);
    }
  }
  [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
  QPointer<RowsCanvas> canvas_;
  int index_;
};

class RowsList final : public QAccessibleWidget {
public:
  explicit RowsList(RowsCanvas* canvas)
      : QAccessibleWidget(canvas, QAccessible::List), canvas_(canvas) {}
  RowsList(const RowsList&) = delete;
  RowsList& operator=(const RowsList&) = delete;
  ~RowsList() override {
    for (const auto& [index, id] : entries_) {
      QAccessible::deleteAccessibleInterface(id);
    }
  }

  /// Made when somebody listens.
  [[nodiscard]] QString text(QAccessible::Text kind) const override {
    return kind == QAccessible::Description ? canvas_->asText() : QAccessibleWidget::text(kind);
  }
  [[nodiscard]] int childCount() const override { return canvas_->rowCount(); }
  [[nodiscard]] QAccessibleInterface* child(int index) const override {
    if (index < 0 || index >= canvas_->rowCount()) {
      return nullptr;
    }
    const auto found = entries_.find(index);
    if (found != entries_.end()) {
      return QAccessible::accessibleInterface(found->second);
    }
    auto* entry = new RowEntry(canvas_, index);
    entries_[index] = QAccessible::registerAccessibleInterface(entry);
    return entry;
  }
  [[nodiscard]] int indexOfChild(const QAccessibleInterface* wanted) const override {
    for (const auto& [index, id] : entries_) {
      if (QAccessible::accessibleInterface(id) == wanted) {
        return index;
      }
    }
    return -1;
  }
  [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
    for (int i = 0; i < canvas_->rowCount(); ++i) {
      if (canvas_->rowRect(i).contains(canvas_->mapFromGlobal(QPoint(x, y)))) {
        return child(i);
      }
    }
    return nullptr;
  }
  [[nodiscard]] QAccessibleInterface* focusChild() const override {
    return canvas_->hasFocus() ? child(canvas_->currentRow()) : nullptr;
  }

private:
  RowsCanvas* canvas_;
  mutable std::map<int, QAccessible::Id> entries_;
};

QAccessibleInterface* listFor(const QString& key, QObject* object) {
  auto* canvas = key == QLatin1String(RowsCanvas::staticMetaObject.className())
                     ? qobject_cast<RowsCanvas*>(object)
                     : nullptr;
  return canvas != nullptr ? new RowsList(canvas) : nullptr;
}

} // namespace

void installRowsAccessibility() {
  static const bool installed = [] {
    QAccessible::installFactory(listFor);
    return true;
  }();
  Q_UNUSED(installed)
}

} // namespace afterbeat::window
