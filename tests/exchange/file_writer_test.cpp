// The function that writes all files: completely or not at all, and never replacing a file without
// being asked to.
#include "core/exchange/file_writer.h"

#include <QTemporaryDir>
#include <filesystem>
#include <gmock/gmock.h>
#include <sys/stat.h>

namespace holdband::exchange::test {

namespace fs = std::filesystem;
using ::testing::HasSubstr;

class FileWriterTest : public ::testing::Test {
protected:
    std::string path(const std::string& name) const
    {
        return m_folder.filePath(QString::fromStdString(name)).toStdString();
    }

    std::string content(const std::string& name) const
    {
        const auto text = readWholeFile(path(name), 1 << 20);
        EXPECT_TRUE(text) << name;
        return text.value_or("");
    }

    std::size_t files() const
    {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(path("")), fs::directory_iterator()));
    }

    QTemporaryDir m_folder;
};

TEST_F(FileWriterTest, WritesANewFileAndNoOther)
{
    const std::string bytes("a\0b\xff", 4);
    ASSERT_TRUE(writeFile(path("new"), bytes, Existing::keep));
    EXPECT_EQ(content("new"), bytes);
    EXPECT_EQ(files(), 1u);
}

TEST_F(FileWriterTest, LeavesAnExistingFileUnlessItMayBeReplaced)
{
    ASSERT_TRUE(writeFile(path("f"), "old", Existing::keep));
    const Done refused = writeFile(path("f"), "new", Existing::keep);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, ProblemKind::file);
    EXPECT_THAT(refused.error().sentence(), HasSubstr("--force"));
    EXPECT_EQ(content("f"), "old");
    ASSERT_TRUE(writeFile(path("f"), "new", Existing::replace));
    EXPECT_EQ(content("f"), "new");
    EXPECT_EQ(files(), 1u);
}

TEST_F(FileWriterTest, ReplacesTheTargetOfALinkAndPreservesPermissions)
{
    ASSERT_TRUE(writeFile(path("f"), "old", Existing::keep));
    ASSERT_EQ(::chmod(path("f").c_str(), 0640), 0);
    fs::create_symlink(path("f"), path("link"));
    ASSERT_TRUE(writeFile(path("link"), "new", Existing::replace));
    EXPECT_TRUE(fs::is_symlink(path("link")));
    EXPECT_EQ(content("f"), "new");
    EXPECT_EQ(fs::status(path("f")).permissions(),
              fs::perms::owner_read | fs::perms::owner_write | fs::perms::group_read);
}

TEST_F(FileWriterTest, RefusesPathsThatCannotBeAFile)
{
    fs::create_directory(path("folder"));
    ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
    for (const char* name : {"folder", "pipe", "none/f"}) {
        const Done refused = writeFile(path(name), "x", Existing::replace);
        ASSERT_FALSE(refused) << name;
        EXPECT_EQ(refused.error().kind, ProblemKind::file) << name;
    }
    EXPECT_EQ(files(), 2u);
}

TEST_F(FileWriterTest, AcceptsAnyNameThatTheFileSystemAccepts)
{
    for (const std::string& name : {std::string("a \"b\" 'c';--"), std::string("line\nend"),
                                    std::string("\xE2\x80\xAE"
                                                "fdp"),
                                    std::string(255, 'n')}) {
        ASSERT_TRUE(writeFile(path(name), "x", Existing::keep)) << name;
        EXPECT_EQ(content(name), "x");
    }
    EXPECT_FALSE(writeFile(path(std::string(256, 'n')), "x", Existing::keep));
    EXPECT_EQ(files(), 4u);
}

} // namespace holdband::exchange::test
