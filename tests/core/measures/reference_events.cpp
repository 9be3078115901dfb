#include "tests/core/measures/reference_parts.h"

#include <algorithm>
#include <string>

namespace afterbeat::reference {

namespace {

void medianAndWorst(Sheet& sheet, MeasureId median, MeasureId worst, std::vector<double> values) {
  if (values.empty()) {
    sheet.notApplicable(median);
    sheet.notApplicable(worst);
    return;
  }
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  sheet.value(median, n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2);
  sheet.value(worst, values.back());
}

} // namespace

void listShocks(const Facts& f, Figures& figures) {
  int number = 0;
  for (std::size_t i = 0; i < f.record.entries.size(); ++i) {
    const Entry& e = f.record.entries[i];
    const auto* shock = std::get_if<entry::Shock>(&e.data);
    if (shock == nullptr || !e.hasTime || (e.incomplete && shock->delivered)) {
      continue;
    }
    ShockFigures row;
    row.t = e.t;
    row.delivered = shock->delivered;
    row.energyJ = shock->energyJ;
    for (const DeliveredShock& s : f.delivered) {
      if (s.entry != i) {
        continue;
      }
      row.number = ++number;
      const auto length = [&](int n) { return f.grid.length(n); };
      if (s.pre) {
        row.pre = length(*s.pre);
      }
      if (s.post) {
        row.post = length(*s.post);
      }
      if (s.pre && s.post) {
        row.peri = length(*s.pre + *s.post);
      }
      if (s.analysisEnd) {
        row.adviceToShock = length(s.at - *s.analysisEnd);
      }
    }
    figures.shocks.push_back(row);
  }
}

void shockPauses(const Figures& figures, Sheet& sheet) {
  std::vector<double> pre, post, peri, advice;
  for (const ShockFigures& s : figures.shocks) {
    const auto add = [](std::vector<double>& list, const std::optional<Duration>& d) {
      if (d) {
        list.push_back(secondsOf(*d));
      }
    };
    add(pre, s.pre);
    add(post, s.post);
    add(peri, s.peri);
    add(advice, s.adviceToShock);
  }
  medianAndWorst(sheet, MeasureId::adviceToShockMedian, MeasureId::adviceToShockWorst, advice);
  if (figures.evidence == Evidence::none) {
    return;
  }
  medianAndWorst(sheet, MeasureId::preShockPauseMedian, MeasureId::preShockPauseWorst, pre);
  medianAndWorst(sheet, MeasureId::postShockPauseMedian, MeasureId::postShockPauseWorst, post);
  medianAndWorst(sheet, MeasureId::periShockPauseMedian, MeasureId::periShockPauseWorst, peri);
}

namespace {

bool writtenByADefibrillator(const Entry& e) {
  if (e.source != Source::device) {
    return false;
  }
  const auto* shock = std::get_if<entry::Shock>(&e.data);
  if (shock != nullptr && e.hasTime && (!e.incomplete || !shock->delivered)) {
    return true;
  }
  return !e.incomplete && (std::holds_alternative<entry::PowerOn>(e.data) ||
                           std::holds_alternative<entry::PowerOff>(e.data) ||
                           std::holds_alternative<entry::Electrodes>(e.data) ||
                           std::holds_alternative<entry::PatientMode>(e.data) ||
                           std::holds_alternative<entry::Analysis>(e.data) ||
                           std::holds_alternative<entry::Charge>(e.data));
}

} // namespace

bool holdsADefibrillatorsRecording(const Facts& f) {
  return std::any_of(f.record.entries.begin(), f.record.entries.end(), writtenByADefibrillator);
}

void deviceCounts(const Facts& f, const Figures& figures, Sheet& sheet) {
  int delivered = 0, withheld = 0, unknown = 0, withEnergy = 0, advising = 0;
  double energy = 0;
  for (const ShockFigures& s : figures.shocks) {
    delivered += s.delivered == true ? 1 : 0;
    withheld += s.delivered == false ? 1 : 0;
    withEnergy += s.delivered == true && s.energyJ ? 1 : 0;
    energy += s.delivered == true ? s.energyJ.value_or(0) : 0;
  }
  for (const Entry& e : f.record.entries) {
    const auto* shock = std::get_if<entry::Shock>(&e.data);
    unknown += shock != nullptr && e.hasTime && !shock->delivered ? 1 : 0;
  }
  for (const Found& a : f.analyses) {
    advising += f.data<entry::Analysis>(a).advice == Advice::shock ? 1 : 0;
  }
  if (delivered == 0) {
    sheet.notApplicable(MeasureId::energyTotal);
  } else if (withEnergy == delivered) {
    sheet.value(MeasureId::energyTotal, energy);
  }
  const int analyses = static_cast<int>(f.analyses.size());
  const bool noneIsKnown = holdsADefibrillatorsRecording(f);
  for (const auto& [id, n] : {std::pair{MeasureId::shocksDelivered, delivered},
                              {MeasureId::shocksWithheld, withheld},
                              {MeasureId::shocksUnknown, unknown},
                              {MeasureId::analyses, analyses}}) {
    if (n > 0 || noneIsKnown) {
      sheet.value(id, n);
    }
  }
  if (analyses > 0 || noneIsKnown) {
    sheet.value(MeasureId::analysesAdvisingShock, advising);
  }
}

namespace {

std::optional<Time> first(const Facts& f, const std::function<bool(const Entry&)>& is) {
  for (const Entry& e : f.record.entries) {
    if (e.hasTime && !e.incomplete && is(e)) {
      return e.t;
    }
  }
  return std::nullopt;
}

std::optional<Time> firstMilestone(const Facts& f, const std::string& what) {
  return first(f, [&](const Entry& e) {
    const auto* m = std::get_if<entry::Milestone>(&e.data);
    return m != nullptr && m->what == what;
  });
}

} // namespace

void betweenEvents(const Facts& f, Sheet& sheet) {
  const auto powerOn =
      first(f, [](const Entry& e) { return std::holds_alternative<entry::PowerOn>(e.data); });
  const auto electrodes = first(f, [](const Entry& e) {
    const auto* x = std::get_if<entry::Electrodes>(&e.data);
    return x != nullptr && x->state == ElectrodeState::attached;
  });
  const auto analysis =
      first(f, [](const Entry& e) { return std::holds_alternative<entry::Analysis>(e.data); });
  const auto shock = first(f, [](const Entry& e) {
    const auto* x = std::get_if<entry::Shock>(&e.data);
    return x != nullptr && x->delivered == true;
  });
  const auto returned = first(f, [](const Entry& e) {
    const auto* x = std::get_if<entry::Circulation>(&e.data);
    return x != nullptr && x->state == CirculationState::returned;
  });
  const auto collapse = firstMilestone(f, "collapse"), call = firstMilestone(f, "call_received");
  const auto arrived = firstMilestone(f, "device_arrived");
  std::optional<Time> handsOn;
  for (int i = f.grid.points() - 1; i >= 0; --i) {
    if (f.handsOn.point(i)) {
      handsOn = f.grid.time(i);
    }
  }
  const auto between = [&](MeasureId id, std::optional<Time> a, std::optional<Time> b) {
    if (a && b) {
      sheet.value(id, secondsOf(*b - *a));
    }
  };
  between(MeasureId::powerOnToFirstShock, powerOn, shock);
  between(MeasureId::electrodesToFirstShock, electrodes, shock);
  between(MeasureId::collapseToFirstShock, collapse, shock);
  between(MeasureId::callToFirstShock, call, shock);
  between(MeasureId::firstHandsOnToFirstShock, handsOn, shock);
  between(MeasureId::powerOnToElectrodes, powerOn, electrodes);
  between(MeasureId::powerOnToFirstHandsOn, powerOn, handsOn);
  between(MeasureId::electrodesToFirstAnalysis, electrodes, analysis);
  between(MeasureId::collapseToFirstHandsOn, collapse, handsOn);
  between(MeasureId::callToFirstHandsOn, call, handsOn);
  between(MeasureId::callToDeviceArrived, call, arrived);
  between(MeasureId::collapseToCirculationReturned, collapse, returned);
}

void circulation(const Facts& f, Figures& figures, Sheet& sheet) {
  bool returned = false;
  for (const Entry& e : f.record.entries) {
    const auto* c = std::get_if<entry::Circulation>(&e.data);
    returned = returned || (c != nullptr && !e.incomplete && e.hasTime &&
                            c->state == CirculationState::returned);
  }
  GridSet all(f.grid.points());
  Duration longest{};
  for (const auto& [from, to] : f.circulation) {
    figures.circulation.push_back(stretch(f, from, to));
    all.put(from, to);
    longest = f.grid.length(to - from) > longest ? f.grid.length(to - from) : longest;
  }
  if (!returned) {
    return;
  }
  if (f.circulation.empty()) {
    sheet.notApplicable(MeasureId::circulationTime);
    sheet.notApplicable(MeasureId::longestCirculation);
    return;
  }
  const auto in = [&](int i) { return all.cell(i); };
  sheet.value(MeasureId::circulationTime, secondsOf(cells(f, 0, f.grid.points() - 1, in)));
  sheet.value(MeasureId::longestCirculation, secondsOf(longest));
}

void timeOn(const Facts& f, Sheet& sheet) {
  std::optional<Time> onSince;
  bool everOn = false;
  double sum = 0;
  for (const Entry& e : f.record.entries) {
    if (!e.hasTime || e.incomplete) {
      continue;
    }
    if (std::holds_alternative<entry::PowerOn>(e.data)) {
      everOn = true;
      onSince = onSince ? onSince : std::optional<Time>{e.t};
    }
    if (std::holds_alternative<entry::PowerOff>(e.data) && onSince) {
      sum += secondsOf(e.t - *onSince);
      onSince.reset();
    }
  }
  if (onSince) {
    const auto end = latest(f, [](const Entry& e) {
      return std::holds_alternative<entry::Mark>(e.data) ||
             std::holds_alternative<entry::Milestone>(e.data) ||
             std::holds_alternative<entry::Unreadable>(e.data);
    });
    sum += secondsOf(*end - *onSince);
  }
  if (everOn) {
    sheet.value(MeasureId::timeOn, sum);
  }
}

} // namespace afterbeat::reference
