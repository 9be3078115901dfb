#include "importers/csv/vocabulary.h"

#include <algorithm>
#include <array>
#include <utility>

namespace afterbeat {
namespace {

struct TopicWords {
  Topic topic;
  State state;
  /// Phrases with | between them.
  std::string_view phrases;
};

constexpr TopicWords kTopics[] = {
    {Topic::device, State::none, "device|aed|defi|defibrillator|ger\u00e4t|power|strom"},
    {Topic::device, State::on,
     "einschalten|eingeschaltet|switched on|switch on|turned on|turn on|powered on"},
    {Topic::device, State::off,
     "ausschalten|ausgeschaltet|switched off|switch off|turned off|turn off|powered off"},
    {Topic::electrodes, State::none,
     "electrode|electrodes|pad|pads|defibrillation pads|defibrillation electrodes|aed pads|"
     "defi pads|elektrode|elektroden|klebeelektrode|klebeelektroden|defi elektroden"},
    {Topic::electrodes, State::poor,
     "check electrodes|check pads|elektroden pr\u00fcfen|pads pr\u00fcfen"},
    {Topic::analysis, State::none,
     "analysis|analyses|rhythm analysis|ecg analysis|analysing|analyzing|analyse|"
     "rhythmusanalyse|rhythmus analyse|ekg analyse|analysiert"},
    {Topic::analysis, State::advised,
     "shock advised|shock recommended|shock indicated|schock empfohlen|schock notwendig|"
     "schock angeraten"},
    {Topic::analysis, State::notAdvised,
     "no shock|no shock advised|no shock recommended|no shock indicated|shock not advised|"
     "shock not recommended|kein schock|kein schock empfohlen|kein schock notwendig|"
     "schock nicht empfohlen|kein schock angeraten"},
    {Topic::shock, State::none,
     "shock|shocks|shocked|schock|schocks|shockabgabe|schockabgabe|schock abgabe|elektroschock|"
     "defibrillation|defibrillated|defibrilliert|defib|shock delivery"},
    {Topic::shock, State::withheld,
     "no shock given|no shock delivered|shock not given|shock not delivered|shock withheld|"
     "not shocked|kein schock abgegeben|kein schock ausgel\u00f6st|schock nicht abgegeben|"
     "schock nicht ausgel\u00f6st"},
    {Topic::compressions, State::none,
     "compressions|chest compressions|hdm|herzdruckmassage|herz druck massage|druckmassage|"
     "thoraxkompressionen|kompressionen|herzmassage"},
    {Topic::compressions, State::start,
     "hands on|pause ende|pause beendet|ende der pause|end of pause|pause ended|pause over"},
    {Topic::compressions, State::stop,
     "hands off|pause|no compressions|keine kompressionen|keine hdm|keine herzdruckmassage|"
     "compression pause"},
    {Topic::singleCompression, State::none,
     "compression|chest compression|single compression|kompression|thoraxkompression|"
     "einzelne kompression"},
    {Topic::cpr, State::none, "cpr|bls|basic life support"},
    {Topic::resuscitation, State::none, "reanimation|rea|resuscitation|wiederbelebung"},
    {Topic::ventilation, State::none,
     "ventilation|ventilations|breath|breaths|rescue breath|rescue breaths|ventilated|beatmung|"
     "beatmungen|beatmet|atemspende|atemspenden|atemhub|atemh\u00fcbe"},
    {Topic::airway, State::none,
     "airway|airway device|atemweg|atemwege|atemwegssicherung|atemwegshilfe"},
    {Topic::airway, State::mask,
     "bag valve mask|bag mask|mask ventilation|maskenbeatmung|beutel masken beatmung|beutelmaske|"
     "bvm"},
    {Topic::airway, State::supraglottic,
     "supraglottic|supraglottic airway|laryngeal mask|laryngeal tube|larynxmaske|larynxtubus|"
     "supraglottisch|supraglottischer atemweg|sga"},
    {Topic::airway, State::tube,
     "intubation|intubated|intubiert|endotracheal tube|endotrachealtubus|endotracheale intubation"},
    {Topic::circulation, State::none,
     "circulation|spontaneous circulation|pulse|kreislauf|spontankreislauf|puls"},
    {Topic::circulation, State::returned,
     "rosc|return of circulation|return of spontaneous circulation"},
    {Topic::circulation, State::lost,
     "rosc lost|rosc verloren|rearrest|re arrest|no pulse|pulseless|kein puls|pulslos|"
     "erneuter kreislaufstillstand|kein kreislauf|no circulation"},
    {Topic::rhythm, State::none, "rhythm|rhythmus|herzrhythmus|ecg|ekg|heart rhythm"},
    {Topic::rhythm, State::shockable,
     "vf|v fib|vfib|ventricular fibrillation|kammerflimmern|kf|vfl|ventricular flutter|"
     "kammerflattern|pvt|pulseless vt|pulseless ventricular tachycardia|pulslose vt|"
     "pulslose kammertachykardie|pulslose ventrikul\u00e4re tachykardie"},
    {Topic::rhythm, State::ventricularTachycardia,
     "vt|v tach|ventricular tachycardia|kammertachykardie|ventrikul\u00e4re tachykardie"},
    {Topic::rhythm, State::asystole, "asystole|asystolie|asystoly|flatline|nulllinie|null linie"},
    {Topic::rhythm, State::organised,
     "pea|pulseless electrical activity|pulslose elektrische aktivit\u00e4t|sinus|sinus rhythm|"
     "sinusrhythmus|organised rhythm|organized rhythm|organisierter rhythmus|bradycardia|"
     "bradykardie|tachycardia|tachykardie|atrial fibrillation|vorhofflimmern"},
    {Topic::crew, State::none,
     "crew|ambulance|ambulance crew|ems|paramedic|paramedics|emergency doctor|rettungsdienst|"
     "rettungswagen|rtw|notarzt|not\u00e4rztin|nef|sanit\u00e4ter"},
    {Topic::collapse, State::none,
     "collapse|collapsed|collapses|patient collapsed|patient collapses|kollaps|kollabiert|"
     "patient kollabiert|zusammenbruch|zusammengebrochen|bricht zusammen|patient bricht zusammen"},
    {Topic::callReceived, State::none,
     "call received|emergency call|emergency call received|emergency call made|notruf|"
     "notruf eingegangen|notruf abgesetzt|notruf erfolgt"},
    {Topic::handover, State::none,
     "handover|hand over|handed over|handover to crew|handover to ambulance|handover to ems|"
     "handover to paramedics|\u00fcbergabe|\u00fcbergeben|patient \u00fcbergeben|"
     "\u00fcbergabe an rettungsdienst|\u00fcbergabe rettungsdienst|\u00fcbergabe an notarzt|"
     "\u00fcbergabe an rtw"},
    {Topic::effortsEnded, State::none,
     "efforts ended|efforts stopped|termination of resuscitation|abbruch|abbruch reanimation|"
     "todesfeststellung|ma\u00dfnahmen beendet|ma\u00dfnahmen eingestellt"},
    {Topic::cprStartedByOthers, State::none,
     "bystander cpr|bystander cpr started|laienreanimation|laienreanimation begonnen|"
     "ersthelfer reanimation"},
    {Topic::rescuerChange, State::none,
     "rescuer change|rescuers change|change rescuer|change rescuers|rescuers changed|"
     "rescuer changed|rescuer swap|swap|swapped|compressor change|helferwechsel|wechsel|"
     "wechsel helfer|helfer gewechselt|abl\u00f6sung"},
    {Topic::medication, State::none,
     "medication|medicine|drug|drugs|medikament|medikamente|medikation|medikamentengabe"},
    {Topic::drug, State::none,
     "adrenaline|adrenalin|epinephrine|epinephrin|amiodarone|amiodaron|atropine|atropin|"
     "lidocaine|lidocain|naloxone|naloxon|glucose|glukose|calcium|kalzium|magnesium|bicarbonate|"
     "bikarbonat|natriumbikarbonat|vasopressin|ketamine|ketamin|midazolam|fentanyl|"
     "noradrenaline|noradrenalin|norepinephrine|norepinephrin"},
    {Topic::patientMode, State::none, "mode|modus|patient mode|patientenmodus"},
    {Topic::patientMode, State::adult, "adult mode|erwachsenenmodus"},
    {Topic::patientMode, State::child, "child mode|kindermodus|paediatric mode|pediatric mode"},
    {Topic::note, State::none,
     "note|notes|remark|remarks|comment|notiz|bemerkung|anmerkung|kommentar|hinweis"},
};

struct StateWords {
  State state;
  std::string_view phrases;
};

constexpr StateWords kStates[] = {
    {State::yes, "yes|ja|ok"},
    {State::no, "no|none|nein|kein|keine|keiner|nicht|not"},
    {State::on, "on|an|ein|attached|applied|placed|connected|in place|switched on|turned on|"
                "eingeschaltet|angeschaltet|geklebt|aufgeklebt|angeklebt|angelegt|angebracht|"
                "angeschlossen|drauf"},
    {State::off, "off|aus|ab|detached|removed|disconnected|fallen off|switched off|turned off|"
                 "ausgeschaltet|abgeschaltet|abgenommen|entfernt|gel\u00f6st|abgel\u00f6st|"
                 "abgefallen"},
    {State::poor, "poor contact|poor|bad contact|loose|schlechter kontakt|wackelkontakt|locker"},
    {State::start, "start|starts|started|begin|begins|began|begun|beginning|resume|resumed|"
                   "restart|restarted|continue|continued|weiter|beginn|beginnt|begonnen|anfang|"
                   "angefangen|gestartet|fortgesetzt|wieder aufgenommen|wiederaufgenommen|wieder"},
    {State::stop, "stop|stops|stopped|end|ends|ended|pause|paused|pausiert|halt|interrupted|"
                  "unterbrochen|unterbrechung|ende|beendet|gestoppt|stopp|finished|complete|"
                  "completed|terminated|fertig|eingestellt"},
    {State::stop, "abgebrochen|abbruch"},
    {State::advised, "advised|recommended|indicated|shock|shock advised|shock recommended|"
                     "shockable|empfohlen|schock|schock empfohlen|schockbar|schock notwendig|"
                     "defibrillierbar"},
    {State::notAdvised, "no shock|no shock advised|no shock recommended|shock not advised|"
                        "not advised|not shockable|non shockable|nonshockable|kein schock|"
                        "kein schock empfohlen|kein schock notwendig|schock nicht empfohlen|"
                        "nicht empfohlen|nicht schockbar|nicht defibrillierbar"},
    {State::unclear, "inconclusive|unclear|unklar|nicht eindeutig|uneindeutig|artefact|artifact|"
                     "artefakt|artefakte|noise|aborted|failed|abgebrochen"},
    {State::given, "given|delivered|done|abgegeben|ausgel\u00f6st|verabreicht|gegeben|erfolgt"},
    {State::withheld, "withheld|not given|not delivered|cancelled|canceled|refused|"
                      "nicht abgegeben|nicht ausgel\u00f6st|nicht gegeben|nicht erfolgt|"
                      "abgebrochen|verweigert"},
    {State::arrived, "arrived|arrives|arrival|here|on scene|da|ist da|eingetroffen|trifft ein|"
                     "angekommen|vor ort|ankunft"},
    {State::requested, "requested|sent for|called|fetched|angefordert|geholt|wird geholt|holen|"
                       "gerufen"},
    {State::returned, "returned|back|present|restored|returns|zur\u00fcck|wieder da|tastbar|"
                      "vorhanden|wiederhergestellt"},
    {State::lost, "lost|gone|absent|verloren|weg|nicht tastbar|nicht vorhanden|not present"},
    {State::noAirway, "none|no|kein|keine|keiner|without|ohne|nothing"},
    {State::mask, "mask|bag valve mask|bag mask|bvm|maske|beutel|beutelmaske|beutel maske|"
                  "maskenbeatmung|beutel masken beatmung"},
    {State::supraglottic, "supraglottic|supraglottic airway|supraglottisch|sga|laryngeal mask|"
                          "laryngeal tube|larynxmaske|larynxtubus"},
    {State::tube, "tube|tubus|intubation|intubated|intubiert|endotracheal tube|"
                  "endotrachealtubus|endotracheal|ett"},
    {State::shockable, "vf|v fib|vfib|ventricular fibrillation|fibrillation|kammerflimmern|kf|vfl|"
                       "ventricular flutter|kammerflattern|pvt|pulseless vt|pulslose vt|"
                       "pulseless ventricular tachycardia|pulslose ventrikul\u00e4re tachykardie|"
                       "pulslose kammertachykardie|shockable|schockbar|defibrillierbar"},
    {State::ventricularTachycardia, "vt|v tach|ventricular tachycardia|kammertachykardie|"
                                    "ventrikul\u00e4re tachykardie"},
    {State::asystole, "asystole|asystolie|asystoly|flatline|nulllinie|null linie"},
    {State::organised,
     "organised|organized|organisiert|pea|pulseless electrical activity|"
     "pulslose elektrische aktivit\u00e4t|sinus|sinus rhythm|sinusrhythmus|sr|nsr|"
     "organised rhythm|organized rhythm|organisierter rhythmus|bradycardia|bradykardie|"
     "tachycardia|tachykardie|afib|atrial fibrillation|vorhofflimmern|vhf"},
    {State::adult, "adult|erwachsener|erwachsene|erwachsen"},
    {State::child, "child|kind|pediatric|paediatric"},
    {State::infant, "infant|baby|s\u00e4ugling"},
};

/// Calls `take` with the folded words of each phrase of a |-separated list.
template <typename Take>
void eachPhrase(std::string_view list, Take&& take) {
  while (!list.empty()) {
    const auto end = std::min(list.find('|'), list.size());
    take(wordsOf(list.substr(0, end)));
    list.remove_prefix(std::min(end + 1, list.size()));
  }
}

/// Articles and the like are taken out of notes before they are compared, so out of phrases too.
std::vector<std::string> withoutFillers(std::vector<std::string> words) {
  words.erase(std::remove_if(words.begin(), words.end(),
                             [](const auto& word) { return isFiller(word) || opensAside(word); }),
              words.end());
  return words;
}

bool holds(const std::vector<std::string>& words, std::string_view list) {
  bool found = false;
  eachPhrase(list, [&](const std::vector<std::string>& phrase) {
    found = found ||
            std::search(words.begin(), words.end(), phrase.begin(), phrase.end()) != words.end();
  });
  return found;
}

bool isOneOf(std::string_view word, std::string_view list) {
  return holds({std::string{word}}, list);
}

} // namespace

const std::vector<TopicPhrase>& topicPhrases() {
  static const auto phrases = [] {
    std::vector<TopicPhrase> all;
    for (const auto& one : kTopics) {
      eachPhrase(one.phrases, [&](std::vector<std::string> words) {
        all.push_back({withoutFillers(std::move(words)), one.topic, one.state});
      });
    }
    return all;
  }();
  return phrases;
}

const std::vector<StatePhrase>& statePhrases() {
  static const auto phrases = [] {
    std::vector<StatePhrase> all;
    for (const auto& one : kStates) {
      eachPhrase(one.phrases, [&](std::vector<std::string> words) {
        all.push_back({withoutFillers(std::move(words)), one.state});
      });
    }
    return all;
  }();
  return phrases;
}

bool isFiller(std::string_view word) {
  return isOneOf(word, "a|the|of|is|was|der|die|das|den|dem|des|nr|number|st|nd|rd|th|te|ten|ter|x|"
                       "first|second|third|next|another|erster|erste|erstes|zweiter|zweite|"
                       "dritter|dritte|weiterer|weitere|now|jetzt");
}

bool opensAside(std::string_view word) {
  return isOneOf(word, "for|due|because|by|wegen|zur|zum|zwecks|f\u00fcr|durch|von|weil");
}

ColumnRole roleOfHeading(std::string_view heading) {
  static constexpr std::array<std::pair<ColumnRole, std::string_view>, 5> kRoles = {{
      {ColumnRole::time, "time|zeit|uhrzeit|uhr|clock|when|wann|zeitpunkt|seconds|sekunden|"
                         "elapsed|t|laufzeit|stoppuhr|stopwatch|time s|mm ss|hh mm ss|hh mm|"
                         "tageszeit"},
      {ColumnRole::date, "date|datum|day|tag"},
      {ColumnRole::what, "what|event|was|art|ereignis|action|ma\u00dfnahme|aktion|vorgang|activity|"
                         "entry|happened|geschehen|eintrag"},
      {ColumnRole::value, "value|wert|result|ergebnis|energy|energie|dose|dosis|detail|details|"
                          "amount|menge|joule"},
      {ColumnRole::remark, "remark|remarks|note|notes|comment|comments|bemerkung|bemerkungen|"
                           "notiz|notizen|anmerkung|anmerkungen|kommentar|hinweis"},
  }};
  const auto words = wordsOf(heading);
  for (const auto& [role, list] : kRoles) {
    if (holds(words, list)) {
      return role;
    }
  }
  return ColumnRole::other;
}

} // namespace afterbeat
