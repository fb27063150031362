// Provides an application without a display, for drawing without a window. Charts need one with
// widgets.
#pragma once

#include <functional>

namespace holdband::report {

/// Runs `work` with a QApplication that needs no display, whatever the environment.
int withPainting(const char* program, const std::function<int()>& work);

} // namespace holdband::report
