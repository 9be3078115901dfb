#include "app/window/compare/steps_keeper.h"

#include "app/window/compare/archive_words.h"
#include "app/window/look/remembered.h"

#include <algorithm>
#include <mutex>

namespace afterbeat::window {

namespace {

QString rememberedKey(const QString& source) {
  // Slashes would make groups of the settings.
  return QStringLiteral("compare/steps/%1")
      .arg(QString::fromLatin1(source.toUtf8().toBase64(QByteArray::Base64UrlEncoding)));
}

std::string ownText(const QString& key) {
  return remembered::text(rememberedKey(key)).toStdString();
}

/// By both threads: a worker keeps what the archive refused, so that it is kept even where the
/// window is gone by then.
void changeOwn(const QString& key, const MarkedStep& step, bool adds) {
  static std::mutex one;
  const std::scoped_lock lock(one);
  const std::string there = ownText(key);
  remembered::setText(rememberedKey(key),
                      QString::fromStdString(adds ? archive::withStep(there, step)
                                                  : archive::withoutStep(there, step)));
}

bool has(const std::vector<MarkedStep>& steps, const MarkedStep& step) {
  return std::find(steps.begin(), steps.end(), step) != steps.end();
}

void apply(std::vector<MarkedStep>& steps, const MarkedStep& step, bool adds) {
  steps.erase(std::remove(steps.begin(), steps.end(), step), steps.end());
  if (adds) {
    steps.push_back(step);
  }
}

} // namespace

StepsKeeper::StepsKeeper(QObject* parent) : QObject(parent) {
  pool_.setMaxThreadCount(1);
}

StepsKeeper::~StepsKeeper() {
  pool_.waitForDone();
}

/// `work` gives what is to be done with its result in the window's thread.
void StepsKeeper::onWorker(std::function<std::function<void()>()> work) {
  pool_.start([this, work = std::move(work)] {
    QMetaObject::invokeMethod(this, work(), Qt::QueuedConnection);
  });
}

void StepsKeeper::open(const QString& key, const std::optional<archive::ArchivePlace>& place) {
  const bool other = key != key_ || place != place_;
  key_ = key;
  place_ = place;
  if (other) {
    ++season_;
    shared_.clear();
    underWay_.clear();
    mayWrite_ = false;
    known_ = !place_;
  }
  own_ = archive::stepsFromText(ownText(key_));
  if (place_) {
    ask();
  }
  show();
}

void StepsKeeper::lookAgain() {
  if (place_ && known_) {
    ask();
  }
}

void StepsKeeper::ask() {
  onWorker([this, place = *place_, season = season_]() -> std::function<void()> {
    const auto opened = archive::Archive::open(place);
    Answer answer{opened.and_then(&archive::sharedSteps), false};
    if (answer.marks) {
      answer.mayWrite = opened->mayWrite().value_or(false);
    }
    return [this, answer, season] {
      if (season == season_) {
        answered(answer);
      }
    };
  });
}

void StepsKeeper::answered(const Answer& answer) {
  const bool news =
      !known_ || !answer.marks || *answer.marks != shared_ || answer.mayWrite != mayWrite_;
  known_ = true;
  if (answer.marks) {
    shared_ = *answer.marks;
    mayWrite_ = answer.mayWrite;
  } else {
    emit failed(tr("The marks in the archive could not be read. %1")
                    .arg(archiveWords(answer.marks.error())));
  }
  if (news) {
    show();
  }
}

void StepsKeeper::write(const Change& change) {
  underWay_.push_back(change);
  onWorker(
      [this, change, place = *place_, key = key_, season = season_]() -> std::function<void()> {
        const auto opened = archive::Archive::open(place);
        const Marks marks = opened.and_then([&change](const archive::Archive& archive) {
          return change.adds ? archive::shareStep(archive, change.step)
                             : archive::unshareStep(archive, change.step);
        });
        if (!marks && change.adds) {
          changeOwn(key, change.step, true);
        }
        return [this, change, marks, key, season] {
          if (season == season_) {
            underWay_.erase(underWay_.begin());
          }
          written(change, marks, key);
        };
      });
}

void StepsKeeper::written(const Change& change, const Marks& marks, const QString& key) {
  if (!marks) {
    emit failed((change.adds ? tr("The mark could not be put into the archive; it is kept for you "
                                  "alone. %1")
                             : tr("The mark could not be taken out of the archive. %1"))
                    .arg(archiveWords(marks.error())));
  }
  if (key != key_) {
    return;
  }
  if (marks) {
    shared_ = *marks;
  } else {
    own_ = archive::stepsFromText(ownText(key_));
  }
  show();
}

void StepsKeeper::show() {
  std::vector<MarkedStep> all = shared_;
  for (const Change& change : underWay_) {
    apply(all, change.step, change.adds);
  }
  for (const MarkedStep& step : own_) {
    apply(all, step, true);
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const MarkedStep& a, const MarkedStep& b) { return a.day < b.day; });
  steps_ = std::move(all);
  emit changed();
}

StepsKeeper::Kept StepsKeeper::kept(const MarkedStep& step) const {
  return has(own_, step) ? Kept::own : Kept::shared;
}

bool StepsKeeper::mayTake(const MarkedStep& step) const {
  return mayWrite_ || kept(step) == Kept::own;
}

void StepsKeeper::put(const MarkedStep& step, Kept where) {
  if (where == Kept::shared && mayWrite_) {
    write({step, true});
  } else {
    changeOwn(key_, step, true);
    apply(own_, step, true);
  }
  show();
}

void StepsKeeper::take(const MarkedStep& step) {
  if (has(own_, step)) {
    changeOwn(key_, step, false);
    apply(own_, step, false);
  }
  const bool underWay = std::any_of(underWay_.begin(), underWay_.end(),
                                    [&step](const Change& one) { return one.step == step; });
  if (mayWrite_ && (has(shared_, step) || underWay)) {
    write({step, false});
  }
  show();
}

} // namespace afterbeat::window
