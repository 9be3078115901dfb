#include "importers/wfdb/wfdb_annotations.h"

#include "importers/wfdb/fields.h"
#include "importers/wfdb/wfdb_header.h"

namespace afterbeat {
namespace {

// Codes that are no annotations of their own but belong to one (annot(5)).
constexpr unsigned kSkip = 59;
constexpr unsigned kNum = 60;
constexpr unsigned kSub = 61;
constexpr unsigned kChn = 62;
constexpr unsigned kAux = 63;

/// Reads 16-bit words, least significant byte first.
class Words {
public:
  explicit Words(std::string_view bytes) : bytes_(bytes) {}
  [[nodiscard]] bool has(std::size_t count) const { return bytes_.size() - at_ >= count; }
  unsigned take() {
    const unsigned low = static_cast<unsigned char>(bytes_[at_]);
    const unsigned high = static_cast<unsigned char>(bytes_[at_ + 1]);
    at_ += 2;
    return low | high << 8U;
  }
  std::string_view takeBytes(std::size_t count) {
    const auto piece = bytes_.substr(at_, count);
    at_ += piece.size();
    return piece;
  }

private:
  std::string_view bytes_;
  std::size_t at_ = 0;
};

/// The high 16 bits first, then the low 16 bits.
std::int64_t takeInterval(Words& words) {
  const unsigned high = words.take();
  const unsigned low = words.take();
  return static_cast<std::int32_t>(high << 16U | low);
}

std::string_view withoutNuls(std::string_view text) {
  return text.substr(0, text.find('\0'));
}

/// A first annotation `## time resolution: 500` sets the file's own time steps.
void takeResolution(WfdbAnnotations& annotations) {
  constexpr std::string_view kMark = "## time resolution:";
  if (annotations.all.empty() || annotations.all.front().text.rfind(kMark, 0) != 0) {
    return;
  }
  std::string_view rest = annotations.all.front().text;
  rest.remove_prefix(kMark.size());
  const auto frequency = wholeReal(takeField(rest));
  if (frequency && *frequency > 0) {
    annotations.frequency = *frequency;
    annotations.all.erase(annotations.all.begin());
  }
}

} // namespace

WfdbAnnotations parseAnnotations(std::string_view bytes) {
  WfdbAnnotations result;
  Words words{bytes};
  std::int64_t time = 0;
  int num = 0, channel = 0;
  bool ended = false;
  while (!ended && words.has(2)) {
    const unsigned word = words.take();
    const unsigned code = word >> 10U;
    const unsigned low = word & 0x3FFU;
    WfdbAnnotation* const last = result.all.empty() ? nullptr : &result.all.back();
    if (code == kSkip) {
      if (!words.has(4)) {
        break;
      }
      time += takeInterval(words);
    } else if (code == kNum || code == kChn) {
      (code == kNum ? num : channel) = static_cast<int>(low);
      if (last) {
        (code == kNum ? last->num : last->channel) = static_cast<int>(low);
      }
    } else if (code == kSub) {
      if (last) {
        last->subtype = static_cast<int>(low);
      }
    } else if (code == kAux) {
      const std::size_t stored = low + low % 2;
      if (!words.has(low)) {
        break;
      }
      const auto text = words.takeBytes(stored).substr(0, low);
      if (last) {
        last->text = std::string{withoutNuls(text)};
      }
    } else if (code == 0 && low == 0) {
      ended = true;
    } else {
      time += low;
      if (code != 0) {
        result.all.push_back({time, static_cast<int>(code), 0, channel, num, {}});
      }
    }
  }
  result.complete = ended;
  takeResolution(result);
  return result;
}

} // namespace afterbeat
