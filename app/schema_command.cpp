// The command that prints the JSON Schemas of the formats that the program writes and reads.
#include "app/commands.h"

#include <QFile>
#include <algorithm>
#include <array>

namespace holdband::app {

namespace {

constexpr std::array<const char*, 6> schemaNames{"verdict",  "energy",  "compare",
                                                 "forecast", "batches", "description"};

std::string schemaArguments()
{
    std::string text;
    for (const char* name : schemaNames)
        text += (text.empty() ? "" : "|") + std::string(name);
    return text;
}

int printSchema(const Call& call, const Command& command)
{
    const std::string wanted = call.argument(0);
    const bool known =
        std::find(schemaNames.begin(), schemaNames.end(), wanted) != schemaNames.end();
    // The build embeds resources/json-schema in the program.
    QFile schema(QStringLiteral(":/json-schema/") + QString::fromStdString(wanted) +
                 QStringLiteral(".json"));
    if (!known || !schema.open(QIODevice::ReadOnly))
        return wrongCall("there is no schema \"" + wanted + "\"", usageLine(command));
    print(schema.readAll().toStdString());
    return exitDone;
}

} // namespace

std::vector<Command> schemaCommands()
{
    static const std::string arguments = schemaArguments();
    Command command{"schema",
                    arguments.c_str(),
                    "Print the JSON Schema of an answer in JSON, or of a description.",
                    1,
                    1,
                    {},
                    {}};
    command.run = [named = command](const Call& call) { return printSchema(call, named); };
    return {command};
}

} // namespace holdband::app
