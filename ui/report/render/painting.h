// What drawing needs where there is no window: an application on no display.
#pragma once

#include <functional>

namespace holdband::report {

/// Runs `work` with a QGuiApplication that needs no display, whatever the environment says.
int withPainting(const char* program, const std::function<int()>& work);

} // namespace holdband::report
