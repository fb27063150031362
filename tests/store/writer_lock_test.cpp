// Locks that their program left behind, and those that only look so.
#include "core/store/safety/writer_lock.h"
#include "tests/store/logbooks.h"

#include <QSysInfo>
#include <fstream>
#include <gmock/gmock.h>
#include <sys/file.h>
#include <sys/wait.h>
#include <unistd.h>

namespace holdband::test {
namespace {

class WriterLock : public LogbookTest {
protected:
    std::string lockFile() const { return path("log.holdband.lock"); }

    /// As QLockFile writes it.
    void leaveLock(qint64 process, const QByteArray& boot = QSysInfo::bootUniqueId()) const
    {
        const QString program = QFileInfo(QStringLiteral("/proc/self/exe")).symLinkTarget();
        std::ofstream(lockFile(), std::ios::binary)
            << process << '\n'
            << QFileInfo(program).fileName().toStdString() << '\n'
            << QSysInfo::machineHostName().toStdString() << '\n'
            << QSysInfo::machineUniqueId().toStdString() << '\n'
            << boot.toStdString() << '\n';
    }

    /// The number of a process that has ended.
    static pid_t endedProcess()
    {
        const pid_t child = ::fork();
        if (child == 0)
            ::_exit(0);
        ::waitpid(child, nullptr, 0);
        return child;
    }

    void expectTakenOver() const
    {
        const auto lock = store::lockForWriting(path());
        ASSERT_TRUE(lock) << lock.error().sentence();
        EXPECT_FALSE(store::lockForWriting(path())) << "it is locked for others";
    }
};

TEST_F(WriterLock, OfADeadProgramIsTakenOver)
{
    leaveLock(endedProcess());
    expectTakenOver();
}

TEST_F(WriterLock, OfADeadProgramIsTakenOverWhereItsNumberIsOursNow)
{
    leaveLock(::getpid());
    expectTakenOver();
}

TEST_F(WriterLock, OfADeadProgramIsTakenOverWhereItsNumberIsAnotherHoldbandsNow)
{
    // A process of the same program that doesn't hold the lock.
    int ends[2];
    ASSERT_EQ(::pipe(ends), 0);
    const pid_t other = ::fork();
    if (other == 0) {
        char byte = 0;
        ::close(ends[1]);
        ::_exit(static_cast<int>(::read(ends[0], &byte, 1)));
    }
    ::close(ends[0]);
    leaveLock(other);
    expectTakenOver();
    ::close(ends[1]);
    ::waitpid(other, nullptr, 0);
}

TEST_F(WriterLock, OfTheTimeBeforeARestartIsTakenOver)
{
    leaveLock(::getpid(), "00000000-0000-0000-0000-000000000000");
    expectTakenOver();
}

TEST_F(WriterLock, ThatItsProgramHoldsIsNeverTakenOver)
{
    // Whatever the file says: its program holds it.
    leaveLock(::getpid());
    const int held = ::open(lockFile().c_str(), O_RDWR | O_CLOEXEC);
    ASSERT_EQ(::flock(held, LOCK_EX | LOCK_NB), 0);
    const auto second = store::lockForWriting(path());
    ASSERT_FALSE(second);
    const std::string said = second.error().sentence();
    EXPECT_EQ(second.error().kind, ProblemKind::file);
    EXPECT_THAT(said, testing::HasSubstr("open for writing in"));
    EXPECT_THAT(said, testing::HasSubstr("process " + std::to_string(::getpid())));
    EXPECT_THAT(said, testing::HasSubstr("close it there first"));
    ::close(held);
    expectTakenOver();
}

TEST_F(WriterLock, OfAnotherComputerIsNeverTakenOver)
{
    const std::string theirs = std::to_string(endedProcess()) + "\nholdband\ngarage-laptop\n" +
                               "11112222333344445555666677778888\n" + "aaaa\n";
    std::ofstream(lockFile(), std::ios::binary) << theirs;
    const auto lock = store::lockForWriting(path());
    ASSERT_FALSE(lock);
    EXPECT_THAT(lock.error().sentence(), testing::HasSubstr("another computer, garage-laptop"));
    EXPECT_THAT(lock.error().sentence(), testing::HasSubstr("delete the file"));
    std::ifstream file(lockFile(), std::ios::binary);
    EXPECT_EQ(std::string(std::istreambuf_iterator<char>(file), {}), theirs);
}

} // namespace
} // namespace holdband::test
