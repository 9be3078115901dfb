#include "samples/season/write_season.h"

#include "samples/samples.h"
#include "samples/season/script.h"

namespace afterbeat::samples {

SeasonFile seasonFile(const SeasonPlan& plan, std::size_t index) {
  const Script one = script(plan, index);
  const Sample sample{one.facts.file, story(one), {}};
  return {one.facts.file, logBytes(sample)};
}

} // namespace afterbeat::samples
