// No text of a logbook is longer than the limits say: each text of a description that fills every
// table is made too long in turn.
#include "core/exchange/file_writer.h"
#include "core/exchange/load.h"
#include "core/model/text_limits.h"
#include "core/store/records/journal.h"

#include <QTemporaryDir>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>
#include <set>

namespace holdband::test {
namespace {

using nlohmann::json;
using ::testing::HasSubstr;

class LongTexts : public ::testing::Test {
protected:
    void SetUp() override
    {
        for (const char* name : {"everything.csv", "withdrawn.csv"})
            std::filesystem::copy_file(std::string(HOLDBAND_DAMAGE_DIR "/") + name, path(name));
        m_description =
            json::parse(*exchange::readWholeFile(HOLDBAND_DAMAGE_DIR "/everything.json", 1 << 20));
    }

    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }

    Result<exchange::LoadReport> load(const json& description) const
    {
        std::filesystem::remove(path("d.holdband"));
        std::ofstream(path("d.json")) << description;
        return exchange::loadDescription(path("d.holdband"), path("d.json"));
    }

    /// Pointers to all texts.
    static std::vector<json::json_pointer> textsIn(const json& description)
    {
        std::vector<json::json_pointer> texts;
        const json flat = description.flatten();
        for (const auto& [place, value] : flat.items()) {
            if (value.is_string())
                texts.emplace_back(place);
        }
        return texts;
    }

    QTemporaryDir m_folder;
    json m_description;
};

TEST_F(LongTexts, AreRefusedWhereverTheyStand)
{
    ASSERT_TRUE(load(m_description));
    // Not typed by people: what a file is called, its columns, how it is read, what was done.
    const std::set<std::string> notTyped{"file", "sha256", "Beer", "map",       "shape",
                                         "path", "what",   "time", "arguments", "code"};
    const std::string tooLong(longestText + 1, 'x');
    int refused = 0;
    for (const auto& place : textsIn(m_description)) {
        const json::json_pointer above = place.parent_pointer();
        if (notTyped.contains(place.back()) || (!above.empty() && notTyped.contains(above.back())))
            continue;
        json changed = m_description;
        changed[place] = tooLong;
        const auto loaded = load(changed);
        ASSERT_FALSE(loaded) << place.to_string();
        EXPECT_EQ(loaded.error().kind, ProblemKind::data) << place.to_string();
        EXPECT_LT(loaded.error().sentence().size(), 2'000u) << place.to_string();
        refused += loaded.error().sentence().find("at most") != std::string::npos;
    }
    EXPECT_GE(refused, 25) << "the others are times, choices and names of other things";
}

TEST_F(LongTexts, AreStoredUpToTheLimit)
{
    json changed = m_description;
    changed["journal"][0]["text"] = std::string(longestText, 'x');
    const auto loaded = load(changed);
    ASSERT_TRUE(loaded) << loaded.error().sentence();
    const auto logbook = store::LogbookFile::open(path("d.holdband"), store::Access::read);
    EXPECT_EQ(store::readJournal(**logbook)->front().text.size(), longestText);
}

TEST_F(LongTexts, AreNamedByTheirStartAndTheirLength)
{
    json changed = m_description;
    changed["journal"][0]["text"] = "Pitched late, because " + std::string(longestText, 'x');
    const auto loaded = load(changed);
    ASSERT_FALSE(loaded);
    EXPECT_THAT(loaded.error().sentence(), HasSubstr("\"Pitched late, because xxxxxxxx …\""));
    EXPECT_THAT(loaded.error().sentence(),
                HasSubstr("it has 20022 bytes, and at most 20000 are stored"));
}

} // namespace
} // namespace holdband::test
