#include "app/window/settings/figure_settings_actions.h"

#include "app/papers/phrase_words.h"
#include "app/papers/said.h"
#include "app/window/look/look.h"
#include "app/window/look/remembered.h"
#include "app/window/session/session.h"

#include <QAction>
#include <QActionGroup>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QInputDialog>
#include <QMenu>

namespace afterbeat::window {

namespace {

constexpr double kThresholds[] = {0.5, 1, 1.5, 2, 3, 5};
constexpr double kLeast = 0.5, kMost = 5;
constexpr const char* kRecordEnd = "record_end";

QString chord(const char* letter, int number) {
  return QStringLiteral("Ctrl+%1, %2").arg(QLatin1String(letter)).arg(number);
}

} // namespace

FigureSettingsActions::FigureSettingsActions(Session& session, QWidget* parent)
    : QObject(parent), session_(session), window_(parent) {
  makeThresholds();
  makeWindowEnds();
  makeProfiles();
  recall();
  connect(&session_, &Session::settingsChanged, this, [this] {
    markChosen();
    remember();
  });
  markChosen();
}

QAction* FigureSettingsActions::add(QList<QAction*>& into, QActionGroup* group, const QString& text,
                                    const QString& key) {
  auto* action = new QAction(text, this);
  action->setShortcut(QKeySequence(key));
  action->setCheckable(group != nullptr);
  if (group) {
    group->addAction(action);
  }
  into << action;
  return action;
}

void FigureSettingsActions::makeThresholds() {
  auto* group = new QActionGroup(this);
  int number = 0;
  for (const double threshold : kThresholds) {
    QAction* action =
        add(thresholds_, group, tr("Longer than %1 s").arg(words().plainNumber(threshold)),
            chord("T", ++number));
    action->setData(QVariant::fromValue<qlonglong>(durationFromSeconds(threshold)->count()));
    connect(action, &QAction::triggered, this,
            [this, threshold] { setThreshold(*durationFromSeconds(threshold)); });
  }
  QAction* other = add(thresholds_, nullptr, tr("Another length…"), chord("T", 0));
  connect(other, &QAction::triggered, this, &FigureSettingsActions::askThreshold);
}

void FigureSettingsActions::makeWindowEnds() {
  auto* group = new QActionGroup(this);
  const auto end = [&](const QString& text, int number, WindowEnd value) {
    QAction* action = add(ends_, group, text, chord("D", number));
    action->setData(static_cast<int>(value));
    connect(action, &QAction::triggered, this, [this, value] {
      FigureSettings settings = session_.settings();
      settings.windowEnd = value;
      session_.setSettings(settings);
    });
  };
  end(tr("At the last activity"), 1, WindowEnd::lastActivity);
  end(tr("At the end of the record"), 2, WindowEnd::recordEnd);
}

void FigureSettingsActions::makeProfiles() {
  auto* group = new QActionGroup(this);
  int number = 0;
  for (const Profile& profile : builtInProfiles()) {
    QAction* action = add(profiles_, group, words()(profile.name.c_str()), chord("G", ++number));
    action->setData(QString::fromStdString(profile.id));
    connect(action, &QAction::triggered, this, [this, &profile] { setProfile(profile); });
  }
  QAction* file = add(profiles_, nullptr, tr("From a file of your own…"), chord("G", 0));
  connect(file, &QAction::triggered, this, &FigureSettingsActions::askProfile);
  own_ = add(profiles_, group, tr("Your own profile"), chord("G", 9));
  own_->setVisible(false);
  connect(own_, &QAction::triggered, this, [this] {
    if (ownProfile_) {
      setProfile(*ownProfile_);
    }
  });
}

void FigureSettingsActions::recall() {
  FigureSettings settings = session_.settings();
  bool given = false;
  const double threshold = remembered::text("pause_threshold_s").toDouble(&given);
  if (given && threshold >= kLeast && threshold <= kMost) {
    settings.pauseThreshold = *durationFromSeconds(threshold);
  }
  if (remembered::text("window_end") == QString::fromUtf8(kRecordEnd)) {
    settings.windowEnd = WindowEnd::recordEnd;
  }
  if (const auto own = parseProfile(remembered::text("own_profile").toStdString())) {
    offerOwn(*own);
  }
  const std::string id = remembered::text("profile").toStdString();
  if (const Profile* last = builtInProfile(id)) {
    settings.profile = *last;
  } else if (ownProfile_ && ownProfile_->id == id) {
    settings.profile = *ownProfile_;
  }
  session_.setSettings(settings);
}

void FigureSettingsActions::remember() const {
  const FigureSettings& settings = session_.settings();
  remembered::setText("pause_threshold_s",
                      QString::number(seconds(settings.pauseThreshold), 'g', 12));
  remembered::setText("window_end", settings.windowEnd == WindowEnd::recordEnd
                                        ? QString::fromUtf8(kRecordEnd)
                                        : QString());
  remembered::setText("profile", QString::fromStdString(settings.profile.id));
}

void FigureSettingsActions::offerOwn(const Profile& profile) {
  ownProfile_ = profile;
  own_->setText(tr("Your own: %1").arg(QString::fromStdString(profile.name)));
  own_->setData(QString::fromStdString(profile.id));
  own_->setVisible(true);
}

void FigureSettingsActions::fill(QMenu* menu) {
  menu->addMenu(tr("Hands off counts as a &pause"))->addActions(thresholds_);
  menu->addMenu(tr("The &window of the figures ends"))->addActions(ends_);
  menu->addMenu(tr("&Guideline for the targets"))->addActions(profiles_);
}

void FigureSettingsActions::setThreshold(Duration threshold) {
  FigureSettings settings = session_.settings();
  settings.pauseThreshold = threshold;
  session_.setSettings(settings);
}

void FigureSettingsActions::askThreshold() {
  bool given = false;
  const double chosen = QInputDialog::getDouble(
      window_, tr("Length of a pause"),
      tr("Hands off counts as a pause when longer than (seconds, 0.5 to 5):"),
      seconds(session_.settings().pauseThreshold), kLeast, kMost, 2, &given, {}, 0.1);
  if (given) {
    setThreshold(*durationFromSeconds(chosen));
  }
  markChosen();
}

void FigureSettingsActions::askProfile() {
  const QString path = QFileDialog::getOpenFileName(
      window_, tr("Open a guideline profile"), remembered::folder("profile"),
      tr("Guideline profiles (*.json);;All files (*)"));
  if (path.isEmpty()) {
    return;
  }
  remembered::setFolder("profile", QFileInfo(path).path());
  QString error;
  if (!useProfileFile(path, &error)) {
    emit problem(error);
  }
}

bool FigureSettingsActions::useProfileFile(const QString& path, QString* error) {
  QFile file(path);
  if (!file.open(QIODevice::ReadOnly)) {
    *error = tr("The profile could not be read: %1. The figures stay as they were.")
                 .arg(file.errorString());
    return false;
  }
  const auto profile = parseProfile(file.readAll().toStdString());
  if (!profile) {
    *error = tr("The profile could not be used: %1 The figures stay as they were.")
                 .arg(papers::phraseWords(profile.error().parts));
    return false;
  }
  if (builtInProfile(profile->id) == nullptr) {
    // The whole of it: the file may be moved, or gone at the next start.
    remembered::setText("own_profile", QString::fromStdString(profileJson(*profile)));
    offerOwn(*profile);
  }
  setProfile(*profile);
  return true;
}

void FigureSettingsActions::setProfile(const Profile& profile) {
  FigureSettings settings = session_.settings();
  settings.profile = profile;
  session_.setSettings(settings);
}

void FigureSettingsActions::markChosen() {
  const FigureSettings& settings = session_.settings();
  const auto mark = [](const QList<QAction*>& actions, const QVariant& chosen) {
    for (QAction* action : actions) {
      if (action->isCheckable()) {
        // An exclusive group would not let go of its last choice.
        action->actionGroup()->setExclusionPolicy(QActionGroup::ExclusionPolicy::ExclusiveOptional);
        action->setChecked(action->data() == chosen);
      }
    }
  };
  mark(thresholds_, QVariant::fromValue<qlonglong>(settings.pauseThreshold.count()));
  mark(ends_, static_cast<int>(settings.windowEnd));
  mark(profiles_, QString::fromStdString(settings.profile.id));
}

QString FigureSettingsActions::asText() const {
  return papers::settingsOf(session_.settings(), words());
}

} // namespace afterbeat::window
