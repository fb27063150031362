// Runs the program as a process in its own folder.
#pragma once

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <string>

namespace holdband::test {

inline bool holds(const std::string& text, const std::string& part)
{
    return text.find(part) != std::string::npos;
}

#ifdef HOLDBAND_HAS_WINDOW
inline constexpr bool hasWindow = true;
#else
inline constexpr bool hasWindow = false;
#endif

struct Outcome {
    int status = -1;
    std::string out;
    std::string err;

    nlohmann::json json() const { return nlohmann::json::parse(out); }
};

class Program {
public:
    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }

    std::string write(const std::string& name, const std::string& text) const
    {
        QFile file(QString::fromStdString(path(name)));
        EXPECT_TRUE(file.open(QIODevice::WriteOnly));
        EXPECT_EQ(file.write(text.data(), static_cast<qint64>(text.size())),
                  static_cast<qint64>(text.size()));
        return path(name);
    }

    std::string read(const std::string& name) const
    {
        QFile file(QString::fromStdString(path(name)));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << name;
        return file.readAll().toStdString();
    }

    /// Runs it with unchanged arguments; relative paths are inside the folder.
    Outcome run(const std::vector<std::string>& arguments) const
    {
        QStringList list;
        for (const std::string& argument : arguments)
            list += QString::fromStdString(argument);
        return start(QStringLiteral(HOLDBAND_PROGRAM), list);
    }

    /// Runs a line of bash in which $HOLDBAND is the program.
    Outcome shell(const std::string& line) const
    {
        return start(QStringLiteral("bash"), {QStringLiteral("-c"), QString::fromStdString(line)});
    }

private:
    Outcome start(const QString& program, const QStringList& arguments) const
    {
        QProcess process;
        QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
        environment.insert(QStringLiteral("HOLDBAND"), QStringLiteral(HOLDBAND_PROGRAM));
        environment.insert(QStringLiteral("XDG_CONFIG_HOME"),
                           m_folder.filePath(QStringLiteral("desk")));
        environment.remove(QStringLiteral("DISPLAY"));
        environment.remove(QStringLiteral("WAYLAND_DISPLAY"));
        process.setProcessEnvironment(environment);
        process.setWorkingDirectory(m_folder.path());
        process.start(program, arguments);
        process.closeWriteChannel();
        EXPECT_TRUE(process.waitForFinished(60'000));
        EXPECT_EQ(process.exitStatus(), QProcess::NormalExit);
        return {process.exitCode(), process.readAllStandardOutput().toStdString(),
                process.readAllStandardError().toStdString()};
    }

    QTemporaryDir m_folder;
};

/// The worked example of the method as a description; its log is workedLog().
inline std::string workedDescription()
{
    return R"json({
  "holdband": 1, "zone": "UTC", "units": "metric",
  "setups": [ { "name": "Loop" } ],
  "sensors": [ { "name": "Beer", "reads": "beer", "setup": "Loop" } ],
  "meters": [ { "name": "Meter", "setup": "Loop", "resolution_kwh": 0.01 } ],
  "batches": [ { "name": "Worked", "setup": "Loop", "pitched": "2026-03-07 00:00",
                 "ended": "2026-03-07 10:00", "beer_sensor": "Beer", "tolerance_c": 1,
                 "gap_limit_min": 90,
                 "schedule": [ { "stage": "Hold", "target_c": 20 } ] } ],
  "files": [ { "file": "worked.csv", "columns": { "Beer": "Beer (C)" } } ],
  "meter_readings": [ { "meter": "Meter", "at": "2026-03-07 00:00", "kwh": 5.00 },
                      { "meter": "Meter", "at": "2026-03-07 08:00", "kwh": 5.80 },
                      { "meter": "Meter", "at": "2026-03-07 20:00", "kwh": 6.40 } ] })json";
}

inline std::string workedLog()
{
    return "Time,Beer (C)\n"
           "2026-03-07 00:00,20.0\n2026-03-07 01:00,20.5\n2026-03-07 02:00,21.5\n"
           "2026-03-07 03:00,22.0\n2026-03-07 04:00,20.0\n2026-03-07 05:00,19.5\n"
           "2026-03-07 06:00,18.5\n2026-03-07 07:00,19.5\n2026-03-07 09:00,20.0\n"
           "2026-03-07 10:00,20.0\n";
}

/// A program with the worked example loaded into "log.holdband".
class WorkedProgram : public Program {
public:
    WorkedProgram()
    {
        write("worked.json", workedDescription());
        write("worked.csv", workedLog());
        const Outcome loaded = run({"load", "log.holdband", "worked.json"});
        EXPECT_EQ(loaded.status, 0) << loaded.err;
    }
};

} // namespace holdband::test
