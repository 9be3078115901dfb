/// The ways into the place for many records, and back from it.
#pragma once

#include <QObject>
#include <QStringList>
#include <QThreadPool>

#include <atomic>
#include <memory>

class QWidget;

namespace afterbeat::window {

class ComparePage;
class Session;

/// Asks for files, finds the recording before the open one, and hands both to the page.
class CompareWays final : public QObject {
  Q_OBJECT

public:
  CompareWays(Session& session, ComparePage& page, QWidget* window);
  ~CompareWays() override;

  /// Files to choose; the open record is among them.
  void askFiles();
  /// The open record beside the one recorded before it in the same folder.
  void findBefore();
  /// Lays these side by side, or says why it cannot.
  void putBeside(const QStringList& paths);

signals:
  /// The place for many records is to be shown.
  void asked();
  void said(const QString& sentence);

private:
  Session& session_;
  ComparePage& page_;
  QWidget* window_;
  std::shared_ptr<std::atomic<bool>> cancelled_;
  QThreadPool pool_;
};

} // namespace afterbeat::window
