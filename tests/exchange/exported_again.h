// What export writes, loaded into another logbook and exported again.
#pragma once

#include "core/exchange/export.h"
#include "core/exchange/file_writer.h"
#include "tests/results/described_logbook.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <string>

namespace holdband::test {

inline const std::string plain = R"({"holdband":1,"setups":[{"name":"S"}],
    "sensors":[{"name":"Beer","reads":"beer"}],"meters":[{"name":"M","setup":"S"}]})";

inline std::string fileText(const std::string& path)
{
    const auto text = exchange::readWholeFile(path, 1 << 20);
    EXPECT_TRUE(text) << text.error().sentence();
    return text.value_or("");
}

/// Exports, loads the export into another logbook, exports that, and compares.
inline void expectSameAgain(const DescribedLogbook& files)
{
    const auto first = store::LogbookFile::open(files.path("d.holdband"), store::Access::read);
    ASSERT_TRUE(first);
    ASSERT_TRUE(exchange::exportLogbook(**first, files.path("one")));
    const auto loaded =
        exchange::loadDescription(files.path("again.holdband"), files.path("one/logbook.json"));
    ASSERT_TRUE(loaded) << loaded.error().sentence();
    const auto second = store::LogbookFile::open(files.path("again.holdband"), store::Access::read);
    ASSERT_TRUE(second);
    ASSERT_TRUE(exchange::exportLogbook(**second, files.path("two")));
    EXPECT_EQ(fileText(files.path("one/logbook.json")), fileText(files.path("two/logbook.json")));
    ASSERT_EQ(std::filesystem::exists(files.path("one/readings")),
              std::filesystem::exists(files.path("two/readings")));
    std::error_code none; // a logbook without logs has no such folder
    for (const auto& entry : std::filesystem::directory_iterator(files.path("one/readings"), none))
        EXPECT_EQ(fileText(entry.path().string()),
                  fileText(files.path("two/readings/" + entry.path().filename().string())));
}

} // namespace holdband::test
