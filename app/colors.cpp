#include "app/colors.h"

#include <cstdlib>
#include <string_view>
#include <unistd.h>

namespace holdband::app {

namespace {

ColorChoice chosenColors = ColorChoice::automatic;

// Noncharacters of Unicode, which no text has (Unicode 15, section 23.7, from memory).
constexpr std::string_view markStart = "\xEF\xB7\x90"; // U+FDD0
constexpr std::string_view markEnd = "\xEF\xB7\x91";   // U+FDD1
constexpr std::string_view boldCode = "\x1b[1m";
constexpr std::string_view boldRedCode = "\x1b[1;31m";
constexpr std::string_view plainCode = "\x1b[0m";

bool hasColors(int stream)
{
    if (chosenColors != ColorChoice::automatic)
        return chosenColors == ColorChoice::always;
    const char* none = std::getenv("NO_COLOR");
    const char* terminal = std::getenv("TERM");
    return ::isatty(stream) != 0 && (none == nullptr || *none == '\0') && terminal != nullptr &&
           std::string_view(terminal) != "dumb";
}

void replaceAll(std::string& text, std::string_view mark, std::string_view by)
{
    for (std::size_t at = text.find(mark); at != text.npos; at = text.find(mark, at + by.size()))
        text.replace(at, mark.size(), by);
}

} // namespace

void chooseColors(ColorChoice wanted)
{
    chosenColors = wanted;
}

std::string emphasized(const std::string& text)
{
    if (!hasColors(STDOUT_FILENO))
        return text;
    return std::string(markStart) + text + std::string(markEnd);
}

std::string paintedEmphasis(std::string text)
{
    if (hasColors(STDOUT_FILENO)) {
        replaceAll(text, markStart, boldCode);
        replaceAll(text, markEnd, plainCode);
    }
    return text;
}

std::string problemStart()
{
    if (!hasColors(STDERR_FILENO))
        return "holdband: ";
    return std::string(boldRedCode) + "holdband:" + std::string(plainCode) + " ";
}

} // namespace holdband::app
