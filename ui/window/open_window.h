// The entry of the program's window: makes the application, opens the logbook, and returns the exit
// status when the window is closed.
#pragma once

#include <optional>
#include <string>

namespace holdband::ui {

struct WindowOptions {
    std::optional<std::string> logbook; ///< to open at once
    std::optional<std::string> sample;  ///< a sample logbook, offered while no logbook is open
    /// The description to make it from, if it does not exist yet.
    std::optional<std::string> sampleDescription;
    std::optional<std::string> page;    ///< "rounds", "run", "side by side", "equipment", "imports"
};

/// Needs a display (or an offscreen platform). Call once.
int openWindow(int& argc, char** argv, const WindowOptions& options);

} // namespace holdband::ui
