#include "tests/intake/log_files.h"

#include "core/intake/csv/source_file.h"

#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

using namespace holdband;
using holdband::test::has;

namespace {

class SourceFiles : public test::LogFiles {
protected:
    std::string refusal(const std::string& file) const
    {
        const auto source = SourceFile::open(file);
        if (source)
            return {};
        EXPECT_EQ(source.error().kind, ProblemKind::file);
        return source.error().what;
    }
};

/// While it lives, root has only the rights of an ordinary user.
class WithoutRoot {
public:
    WithoutRoot()
    {
        constexpr uid_t nobody = 65534;
        if (m_isRoot) {
            EXPECT_EQ(::seteuid(nobody), 0);
        }
    }
    ~WithoutRoot()
    {
        if (m_isRoot) {
            EXPECT_EQ(::seteuid(0), 0);
        }
    }
    WithoutRoot(const WithoutRoot&) = delete;
    WithoutRoot& operator=(const WithoutRoot&) = delete;

private:
    bool m_isRoot = ::geteuid() == 0;
};

} // namespace

TEST_F(SourceFiles, onlyRegularFilesAreRead)
{
    EXPECT_EQ(refusal(path("none.csv")), "there is no such file");
    EXPECT_EQ(refusal(path("")), "this is a folder, not a file");
    ASSERT_EQ(::mkfifo(path("pipe").c_str(), 0600), 0);
    EXPECT_EQ(refusal(path("pipe")), "this is a pipe, not a file");
    EXPECT_EQ(refusal("/dev/zero"), "this is a device or socket, not a file");
    EXPECT_EQ(refusal(path(std::string(300, 'x'))), "the file's name is too long");
}

TEST_F(SourceFiles, linksAreFollowed)
{
    write("abc", "real.csv");
    std::filesystem::create_symlink(path("real.csv"), path("link.csv"));
    std::filesystem::create_symlink(path("gone.csv"), path("dangling.csv"));
    std::filesystem::create_symlink(path("loop.csv"), path("loop.csv"));
    EXPECT_EQ(refusal(path("link.csv")), "");
    EXPECT_EQ(refusal(path("dangling.csv")), "there is no such file");
    EXPECT_EQ(refusal(path("loop.csv")), "the link leads in a circle");
    std::filesystem::create_symlink("/dev/zero", path("zero.csv"));
    EXPECT_EQ(refusal(path("zero.csv")), "this is a device or socket, not a file");
}

TEST_F(SourceFiles, unreadableFile)
{
    write("abc");
    ASSERT_EQ(::chmod(path("log.csv").c_str(), 0), 0);
    ASSERT_EQ(::chmod(path(".").c_str(), 0755), 0);
    const WithoutRoot others;
    EXPECT_EQ(refusal(path("log.csv")), "you may not read this file");
}

TEST_F(SourceFiles, piecesAndHash)
{
    const std::string text(SourceFile::pieceSize + 5, 'x');
    auto source = SourceFile::open(write(text));
    ASSERT_TRUE(source.has_value());
    EXPECT_EQ(source->next()->size(), SourceFile::pieceSize);
    EXPECT_EQ(source->next()->size(), 5u);
    EXPECT_TRUE(source->next()->empty());
    // `head -c 1048581 /dev/zero | tr '\0' x | sha256sum`
    EXPECT_EQ(source->sha256(), "87fdbc9d8a44bce194d4cc22e90e6c21dd71179b6ecd0ac1c2af0b34b85e2e18");
}

TEST_F(SourceFiles, aFileThatShrinksWhileReadIsRefused)
{
    auto source = SourceFile::open(write(std::string(3 * SourceFile::pieceSize, 'x')));
    EXPECT_TRUE(source->next().has_value());
    std::filesystem::resize_file(path("log.csv"), SourceFile::pieceSize + 10);
    const auto piece = source->next();
    ASSERT_FALSE(piece.has_value());
    EXPECT_TRUE(has(piece.error().what, "became shorter"));
}

TEST_F(SourceFiles, aFileThatVanishesWhileReadIsStillRead)
{
    auto source = SourceFile::open(write(std::string(2 * SourceFile::pieceSize, 'x')));
    EXPECT_TRUE(source->next().has_value());
    std::filesystem::remove(path("log.csv"));
    EXPECT_EQ(source->next()->size(), SourceFile::pieceSize);
}
