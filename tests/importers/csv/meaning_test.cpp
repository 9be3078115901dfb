#include "importers/csv/meaning.h"

#include <gtest/gtest.h>

namespace afterbeat {
namespace {

/// A meaning in a few letters: the role, the type and what is in it.
std::string shown(std::string_view what, std::string_view value = {}) {
  const auto meaning = meaningOf(what, value);
  if (!meaning) {
    return "?";
  }
  static constexpr const char* kRoles[] = {"",           "remark ", "analysis ", "analysis> ",
                                           "analysis< ", "advice ", "begin ",    "end ",
                                           "cpr> ",      ""};
  std::string text = kRoles[static_cast<std::size_t>(meaning->role)];
  const auto& data = meaning->data;
  const auto number = [](double n) {
    auto digits = std::to_string(n);
    digits.erase(digits.find_last_not_of('0') + 1);
    return digits.back() == '.' ? digits.substr(0, digits.size() - 1) : digits;
  };
  if (const auto* e = std::get_if<entry::Electrodes>(&data)) {
    static constexpr const char* kStates[] = {"attached", "detached", "poor"};
    text += std::string{"electrodes "} + kStates[static_cast<std::size_t>(*e->state)];
  } else if (const auto* a = std::get_if<entry::Analysis>(&data)) {
    static constexpr const char* kAdvice[] = {"shock", "no shock", "inconclusive"};
    text += a->advice ? kAdvice[static_cast<std::size_t>(*a->advice)] : "-";
  } else if (const auto* s = std::get_if<entry::Shock>(&data)) {
    text += *s->delivered ? "shock" : "withheld";
    text += s->energyJ ? " " + number(*s->energyJ) : "";
  } else if (const auto* c = std::get_if<entry::Cpr>(&data)) {
    text += "cpr" + (c->ratePerMin ? " " + number(*c->ratePerMin) : "");
  } else if (const auto* k = std::get_if<entry::Compression>(&data)) {
    text += "compression" + (k->depthMm ? " " + number(*k->depthMm) : "");
  } else if (const auto* v = std::get_if<entry::Ventilation>(&data)) {
    text += "breath" + (v->volumeMl ? " " + number(*v->volumeMl) : "");
    text += meaning->times > 1 ? " x" + std::to_string(meaning->times) : "";
  } else if (const auto* w = std::get_if<entry::Airway>(&data)) {
    static constexpr const char* kDevices[] = {"none", "mask", "supraglottic", "tube"};
    text += std::string{"airway "} + kDevices[static_cast<std::size_t>(*w->device)];
  } else if (const auto* r = std::get_if<entry::Circulation>(&data)) {
    text += *r->state == CirculationState::returned ? "returned" : "lost";
  } else if (const auto* h = std::get_if<entry::Rhythm>(&data)) {
    static constexpr const char* kKinds[] = {"shockable", "organised", "asystole", "unclear"};
    text += std::string{"rhythm "} + kKinds[static_cast<std::size_t>(*h->is)];
  } else if (const auto* m = std::get_if<entry::Milestone>(&data)) {
    text += m->what;
  } else if (const auto* d = std::get_if<entry::Medication>(&data)) {
    text += "medication " + d->text;
  } else if (const auto* n = std::get_if<entry::Mark>(&data)) {
    text += n->text;
  } else if (const auto* p = std::get_if<entry::PatientMode>(&data)) {
    text += p->category == PatientCategory::child ? "child" : "adult";
  } else {
    text += typeName(data);
  }
  return meaning->leftOver.empty() ? text : text + " [" + meaning->leftOver + "]";
}

struct Case {
  const char* what;
  const char* value;
  const char* meaning;
};

void check(std::initializer_list<Case> cases) {
  for (const auto& one : cases) {
    EXPECT_EQ(shown(one.what, one.value), one.meaning) << one.what << " | " << one.value;
  }
}

TEST(Meaning, device) {
  check({{"power on", "", "power_on"},
         {"Device switched on", "", "power_on"},
         {"AED an", "", "power_on"},
         {"Ger\u00e4t eingeschaltet", "", "power_on"},
         {"GERAET EINGESCHALTET", "", "power_on"},
         {"Einschalten", "", "power_on"},
         {"AED", "ein", "power_on"},
         {"power off", "", "power_off"},
         {"Ger\u00e4t aus", "", "power_off"},
         {"AED requested", "", "device_requested"},
         {"AED sent for", "", "device_requested"},
         {"Defi angefordert", "", "device_requested"},
         {"AED arrived", "", "device_arrived"},
         {"AED da", "", "device_arrived"},
         {"Child mode", "", "child"},
         {"Modus", "Erwachsene", "adult"},
         {"AED", "", "?"},
         {"AED", "yellow", "?"}});
}

TEST(Meaning, electrodes) {
  check({{"electrodes attached", "", "electrodes attached"},
         {"Pads on", "", "electrodes attached"},
         {"electrodes", "attached", "electrodes attached"},
         {"Elektroden geklebt", "", "electrodes attached"},
         {"Elektroden aufgeklebt", "", "electrodes attached"},
         {"Elektroden", "entfernt", "electrodes detached"},
         {"Pads removed", "", "electrodes detached"},
         {"Elektroden gel\u00f6st", "", "electrodes detached"},
         {"pads", "poor contact", "electrodes poor"},
         {"Elektroden pr\u00fcfen", "", "electrodes poor"}});
}

TEST(Meaning, analysis) {
  check({{"analysis", "", "analysis -"},
         {"Analysis", "shock", "analysis shock"},
         {"Analysis", "no shock", "analysis no shock"},
         {"analysis: shock advised", "", "analysis shock"},
         {"Analysis: no shock", "", "analysis no shock"},
         {"2nd analysis", "no shock advised", "analysis no shock"},
         {"Analyse", "Schock empfohlen", "analysis shock"},
         {"Analyse", "kein Schock", "analysis no shock"},
         {"Rhythmusanalyse", "nicht eindeutig", "analysis inconclusive"},
         {"Analysis", "inconclusive", "analysis inconclusive"},
         {"Shock advised", "", "advice shock"},
         {"Schock empfohlen", "", "advice shock"},
         {"KEIN SCHOCK EMPFOHLEN", "", "advice no shock"},
         {"No shock advised", "", "advice no shock"},
         {"kein Schock", "", "advice no shock"},
         {"analysis start", "", "analysis> -"},
         {"Beginn Analyse", "", "analysis> -"},
         {"Analyse beendet", "", "analysis< -"}});
}

TEST(Meaning, shocks) {
  check({{"shock", "", "shock"},
         {"Shock", "150", "shock 150"},
         {"Shock", "150 J", "shock 150"},
         {"Schock", "150,5 J", "shock 150.5"},
         {"Shock 200 J", "", "shock 200"},
         {"Shock 2", "", "shock"},
         {"2. Schock", "200 Joule", "shock 200"},
         {"Schock abgegeben", "", "shock"},
         {"First shock delivered", "200J", "shock 200"},
         {"Defibrillation", "", "shock"},
         {"shock", "withheld", "withheld"},
         {"shock", "not given", "withheld"},
         {"Schock", "nicht abgegeben", "withheld"},
         {"Schock nicht ausgel\u00f6st", "", "withheld"},
         {"no shock given", "", "withheld"},
         {"Schock", "empfohlen", "advice shock"},
         {"Shock", "biphasic", "shock [biphasic]"},
         {"Shock given by bystander", "150 J", "shock 150 [Shock given by bystander]"},
         {"Shock was discussed", "", "?"}});
}

TEST(Meaning, compressions) {
  check({{"compressions start", "", "begin cpr"},
         {"Start of compressions", "", "begin cpr"},
         {"Chest compressions started", "110/min", "begin cpr 110"},
         {"compressions", "start", "begin cpr"},
         {"compressions", "110", "begin cpr 110"},
         {"compressions", "30", "begin cpr [30]"},
         {"HDM", "", "begin cpr"},
         {"Herzdruckmassage begonnen", "", "begin cpr"},
         {"HDM wieder aufgenommen", "", "begin cpr"},
         {"hands on", "", "begin cpr"},
         {"End of pause", "", "begin cpr"},
         {"Compressions stop", "", "end cpr"},
         {"Stop compressions", "", "end cpr"},
         {"compressions paused for analysis", "", "end cpr [compressions paused for analysis]"},
         {"HDM Pause", "", "end cpr"},
         {"HDM", "Ende", "end cpr"},
         {"Pause", "", "end cpr"},
         {"hands off", "", "end cpr"},
         {"compression", "", "compression"},
         {"Kompression", "55 mm", "compression 55"},
         {"Thoraxkompression", "5,5 cm", "compression 55"},
         {"CPR started", "", "cpr> cpr"},
         {"Reanimation begonnen", "", "cpr> cpr"},
         {"CPR stopped", "", "end cpr"},
         {"Bystander CPR", "", "cpr_started"},
         {"Laienreanimation begonnen", "", "cpr_started"}});
}

TEST(Meaning, breathsAndAirway) {
  check({{"ventilation", "", "breath"},
         {"Beatmung", "", "breath"},
         {"breath", "500 ml", "breath 500"},
         {"2 breaths", "", "breath x2"},
         {"Breaths", "2", "breath x2"},
         {"2 Beatmungen", "", "breath x2"},
         {"2. Beatmung", "", "breath"},
         {"airway", "mask", "airway mask"},
         {"Atemweg", "Maske", "airway mask"},
         {"Airway: tube", "", "airway tube"},
         {"Intubiert", "", "airway tube"},
         {"Larynxtubus", "", "airway supraglottic"},
         {"airway", "supraglottic", "airway supraglottic"},
         {"Atemweg", "ohne", "airway none"},
         {"airway", "noisy", "?"}});
}

TEST(Meaning, circulationAndRhythm) {
  check({{"ROSC", "", "returned"},
         {"circulation returned", "", "returned"},
         {"Kreislauf", "wieder da", "returned"},
         {"Puls tastbar", "", "returned"},
         {"return of spontaneous circulation", "", "returned"},
         {"circulation", "lost", "lost"},
         {"kein Puls", "", "lost"},
         {"Re-arrest", "", "lost"},
         {"pulse", "80", "?"},
         {"VF", "", "rhythm shockable"},
         {"Kammerflimmern", "", "rhythm shockable"},
         {"rhythm", "VF", "rhythm shockable"},
         {"Rhythmus: Asystolie", "", "rhythm asystole"},
         {"asystole", "", "rhythm asystole"},
         {"EKG", "Sinusrhythmus", "rhythm organised"},
         {"PEA", "", "rhythm organised"},
         {"VT", "", "rhythm organised"},
         {"pulseless VT", "", "rhythm shockable"},
         {"rhythm", "unclear", "rhythm unclear"}});
  EXPECT_EQ(std::get<entry::Rhythm>(meaningOf("VT", "")->data).reason,
            "VT, rate not stated by the source");
  EXPECT_EQ(std::get<entry::Rhythm>(meaningOf("rhythm", "PEA")->data).reason, "PEA");
}

TEST(Meaning, momentsKnownFromOutside) {
  check({{"collapse", "", "collapse"},
         {"Kollaps", "ferry terminal", "collapse [ferry terminal]"},
         {"Notruf", "", "call_received"},
         {"Emergency call", "", "call_received"},
         {"Rettungsdienst da", "", "crew_arrived"},
         {"Notarzt eingetroffen", "", "crew_arrived"},
         {"Ambulance arrived", "", "crew_arrived"},
         {"\u00dcbergabe", "", "handover"},
         {"Uebergabe an Rettungsdienst", "", "handover"},
         {"U\u0308bergabe", "", "handover"}, // a combining accent
         {"handover", "", "handover"},
         {"Reanimation beendet", "", "efforts_ended"},
         {"Termination of resuscitation", "", "efforts_ended"},
         {"Helferwechsel", "", "rescuer_change"},
         {"Rescuer change", "", "rescuer_change"},
         {"Ambulance called", "", "?"}});
}

TEST(Meaning, medicationAndRemarks) {
  check({{"Adrenalin", "1 mg", "medication Adrenalin 1 mg"},
         {"Adrenaline 1 mg iv", "", "medication Adrenaline 1 mg iv"},
         {"Medication", "amiodarone 300 mg", "medication amiodarone 300 mg"},
         {"Medikament: Amiodaron 300 mg", "", "medication Amiodaron 300 mg"},
         {"Note", "family arrives", "remark family arrives"},
         {"Bemerkung: Boden nass", "", "remark Boden nass"},
         {"sauce", "", "?"},
         {"", "", "?"},
         {"...", "5", "?"}});
}

} // namespace
} // namespace afterbeat
