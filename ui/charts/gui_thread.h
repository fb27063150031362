// Work that only the window's thread may do, for threads that need its result.
#pragma once

#include <functional>

namespace holdband::ui {

bool onGuiThread();

/// Runs `work` on the window's thread and returns when it is done.
void runOnGuiThread(const std::function<void()>& work);

/// On the window's thread: does what others wait for. Its event loop calls this; whoever keeps that
/// thread waiting for another one must call it again and again, so that they don't wait for each
/// other.
void serveGuiWork();

} // namespace holdband::ui
