/// What is painted rather than made of controls, for those who hear the window.
#pragma once

namespace afterbeat::window {

/// Lets assistive programs know the rows, the waves and the sheet as pictures with a description,
/// which otherwise would be surfaces without a role.
void describePictures();

} // namespace afterbeat::window
