// The lanes for assistive technology: a list with an item for each bar, its name the batch with its
// setup, its description the verdict sentence. Pressing an item opens its run.
#pragma once

#include <cstddef>

namespace holdband::ui {

class LanesView;

/// Call once for the program; further calls do nothing.
void makeLanesAccessible();
/// Announces that the bars or their texts have changed.
void announceBarsChanged(LanesView& view);
/// Announces that the bar has the keyboard focus now.
void announceFocus(LanesView& view, std::size_t bar);

} // namespace holdband::ui
