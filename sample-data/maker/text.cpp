#include "sample-data/maker/text.h"

#include <cstdarg>
#include <cstdio>
#include <fstream>

namespace holdband::sample {

std::string format(const char* pattern, ...)
{
    char buffer[512];
    std::va_list arguments;
    va_start(arguments, pattern);
    const int length = std::vsnprintf(buffer, sizeof buffer, pattern, arguments);
    va_end(arguments);
    if (length < 0 || static_cast<std::size_t>(length) >= sizeof buffer)
        return {};
    return {buffer, static_cast<std::size_t>(length)};
}

bool writeFile(const std::filesystem::path& path, const std::string& bytes)
{
    std::ofstream file(path, std::ios::binary | std::ios::trunc);
    file.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    file.close();
    return !file.fail();
}

} // namespace holdband::sample
