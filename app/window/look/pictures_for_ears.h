/// What is painted rather than made of controls, for those who hear the window.
#pragma once

#include <QString>

namespace afterbeat::window {

/// A painted widget whose description is made when somebody listens.
class Described {
public:
  Described() = default;
  Described(const Described&) = delete;
  Described& operator=(const Described&) = delete;
  virtual ~Described() = default;
  [[nodiscard]] virtual QString spokenDescription() const = 0;
};

/// Lets assistive programs know the rows, the waves and the sheet as pictures with a description,
/// which otherwise would be surfaces without a role.
void describePictures();

} // namespace afterbeat::window
