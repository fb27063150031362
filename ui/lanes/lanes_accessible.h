// The lanes for assistive technology: a list with an item for each bar, its name the batch with its
// setup, its description the verdict sentence. Pressing an item opens its run.
#pragma once

#include <cstddef>

namespace holdband::ui {

class LanesView;

/// Once for the program; further calls do nothing.
void makeLanesAccessible();
/// There are other bars, or they say something else.
void tellBarsChanged(LanesView& view);
/// The bar has the keyboard's focus now.
void tellFocused(LanesView& view, std::size_t bar);

} // namespace holdband::ui
