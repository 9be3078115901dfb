// Writes core/signal/rhythm/model_coefficients.cpp: the model fitted to all recordings.
//
//     rhythm_train FOLDER_OF_RECORDINGS | clang-format > NEW; mv NEW THAT_FILE
//
// A test of rhythm_goals_test.cpp compares what is in the tree with what the recordings make.

#include "fit.h"

#include <fmt/format.h>

using namespace afterbeat;

int main(int argc, char** argv) {
  if (argc != 2) {
    fmt::print(stderr, "rhythm_train FOLDER: the one that holds ecg/\n");
    return 2;
  }
  const auto signals = labelledSignals(std::filesystem::path{argv[1]} / "ecg");
  const auto model = fitModel(examplesOf(signals, ""));
  fmt::print("// Written by tests/outside/rhythm/train.cpp; do not edit.\n"
             "#include \"core/signal/rhythm/model.h\"\n\n"
             "namespace afterbeat {{\n\n"
             "const RhythmModel& rhythmModel() {{\n"
             "  static const RhythmModel model{{\n"
             "      .weights = {{{{\n");
  for (std::size_t i = 0; i < kRhythmFeatures; ++i) {
    const auto& w = model.weights[i];
    fmt::print("          // {}\n          {{.mean = {:.9g},\n           .deviation = {:.9g},\n"
               "           .weight = {:.9g},\n           .limit = {:.9g}}},\n",
               nameOf(static_cast<RhythmFeature>(i)), w.mean, w.deviation, w.weight, w.limit);
  }
  fmt::print("      }}}},\n      .offset = {:.9g},\n  }};\n  return model;\n}}\n\n"
             "}} // namespace afterbeat\n",
             model.offset);
  return 0;
}
