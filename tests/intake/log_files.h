// Logs for tests: written to a temporary folder, read back with short calls.
#pragma once

#include "core/intake/log/log_reader.h"
#include "core/text/times.h"

#include <QTemporaryDir>
#include <fstream>
#include <gtest/gtest.h>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::test {

using Times = std::vector<std::string>;
using Values = std::vector<double>;

/// A log or a problem; using a log that isn't there fails the test with the problem.
class Outcome : public Result<LogFile> {
public:
    explicit Outcome(Result<LogFile> result) : Result<LogFile>(std::move(result)) {}
    const LogFile* operator->() const
    {
        if (!has_value())
            throw std::runtime_error(error().sentence());
        return &value();
    }
};

class LogFiles : public testing::Test {
protected:
    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }

    std::string write(std::string_view text, const std::string& name = "log.csv") const
    {
        std::ofstream(path(name), std::ios::binary) << text;
        return path(name);
    }

    /// Beer in °F, New York unless stated otherwise.
    LogRequest request(const std::string& file) const
    {
        LogRequest request;
        request.path = file;
        request.wanted = {{"Beer", SeriesKind::temperature, {}, {}}};
        request.zone = *Zone::named("America/New_York");
        request.fallbackUnit = TemperatureUnit::fahrenheit;
        return request;
    }

    static Outcome readLog(const LogRequest& request, const ReadHook& hook = {})
    {
        return Outcome(holdband::readLog(request, hook));
    }

    Outcome read(std::string_view text) const { return readLog(request(write(text))); }

    /// The sentence of the problem, "" if there is none.
    std::string problem(std::string_view text) const
    {
        const auto log = read(text);
        return log ? std::string{} : log.error().sentence();
    }

private:
    QTemporaryDir m_folder;
};

inline std::vector<std::string> timesOf(const LogColumn& column)
{
    std::vector<std::string> list;
    for (const Instant at : column.at)
        list.push_back(rfc3339Utc(at).substr(0, 16));
    return list;
}

inline bool has(const std::string& text, std::string_view part)
{
    return text.find(part) != std::string::npos;
}

} // namespace holdband::test
