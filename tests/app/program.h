// Runs the program as a process in its own folder.
#pragma once

#include "tests/worked_example.h"

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
