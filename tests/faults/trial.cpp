#include "tests/faults/trial.h"

#include "core/store/records/equipment.h"
#include "core/store/safety/soundness.h"
#include "tests/faults/faulty_vfs.h"
#include "tests/store/saying.h"

#include <cerrno>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>

namespace holdband::faults {

namespace fs = std::filesystem;
using store::Access;
using store::LogbookFile;

namespace {

std::string line(const std::string& text)
{
    return text + "\n";
}

/// Hidden files that the next backup or load removes, and journals that the next opening removes or
/// ignores.
bool isUnfinished(const std::string& name)
{
    const std::string file = fs::path(name).filename().string();
    return (file.starts_with(".holdband-") && file.find(".part") != file.npos) ||
           file.ends_with("-journal");
}

/// Left where a rollback failed; the next writer uses it up or ignores it.
Picture withoutJournals(Picture picture)
{
    std::erase_if(picture,
                  [](const auto& entry) { return entry.first.ends_with(".holdband-journal"); });
    return picture;
}

bool isDailyCopy(const std::string& name)
{
    return name.find(" backups/") != name.npos;
}

/// Without the day's copy and its folder, which may be missing where it is said so.
Picture withoutCopies(Picture picture)
{
    std::erase_if(picture, [](const auto& entry) { return isDailyCopy(entry.first); });
    return picture;
}

Picture withoutUnfinished(Picture picture)
{
    std::erase_if(picture, [](const auto& entry) { return isUnfinished(entry.first); });
    return picture;
}

std::string differences(const Picture& left, const Picture& wanted)
{
    std::string text;
    for (const auto& [name, content] : left) {
        const auto found = wanted.find(name);
        if (found == wanted.end())
            text += line("  left over: " + name);
        else if (found->second != content)
            text += line("  differs: " + name + " " + content);
    }
    for (const auto& [name, content] : wanted) {
        if (!left.contains(name))
            text += line("  missing: " + name);
    }
    return text;
}

bool has(const Picture& picture, const std::string& name, const std::string& content)
{
    const auto found = picture.find(name);
    return found != picture.end() && found->second == content;
}

std::string checkSentence(const Problem& problem)
{
    std::string wrong;
    const std::string sentence = problem.sentence();
    if (problem.kind != ProblemKind::file)
        wrong += line("  no problem of a file: " + sentence);
    if (problem.what.empty() || problem.place.empty())
        wrong += line("  says too little: " + sentence);
    for (const char* word : {"damage", "no logbook", "no such logbook", "another program"}) {
        if (sentence.find(word) != sentence.npos)
            wrong += line("  blames the file: " + sentence);
    }
    return wrong;
}

/// The lock of a program that died, as Qt writes it, or one that is empty.
void leaveLock(const std::string& logbook, bool empty)
{
    std::ofstream lock(logbook + ".lock");
    if (!empty)
        lock << "999999999\nholdband\n"
             << "\n";
}

} // namespace

Totals& totals()
{
    static Totals all;
    return all;
}

Trial::Trial(const Act& act) : m_act(act)
{
    const fs::path place = fs::canonical(m_place.path().toStdString());
    m_folder = (place / "run").string();
    m_survived = (place / "survived").string();
    fs::create_directory(m_folder);
    fs::create_directory(m_survived);
    {
        const UndisturbedFiles files(m_folder);
        m_act.prepare(m_folder);
    }
    m_start.emplace(m_folder);
    m_before = pictureOf(m_folder);
    restore();
    const Outcome outcome = runUndisturbed();
    EXPECT_TRUE(outcome.done) << m_act.name << ": " << outcome.done.error().sentence();
    EXPECT_FALSE(outcome.copyFailed);
    m_calls = FaultEngine::only().calls();
    m_after = pictureOf(m_folder);
    ++totals().acts;
}

Outcome Trial::runUndisturbed() const
{
    const UndisturbedFiles files(m_folder);
    return m_act.run(m_folder);
}

void Trial::restore()
{
    clearFolder(m_folder);
    m_start->writeInto(m_folder);
}

/// The program opens every logbook of the folder and finds it sound.
std::string Trial::checkOpens(const std::string& folder) const
{
    std::string wrong;
    for (const auto& entry : fs::directory_iterator(folder)) {
        if (entry.path().extension() != ".holdband")
            continue;
        const auto logbook = LogbookFile::open(entry.path().string(), Access::read, clockOfTests);
        if (!logbook) {
            wrong += line("  can't be opened: " + logbook.error().sentence());
            continue;
        }
        const auto damage = store::findDamage(**logbook);
        if (!damage)
            wrong += line("  can't be checked: " + damage.error().sentence());
        for (const std::string& sentence : damage.value_or(std::vector<std::string>{}))
            wrong += line("  damaged: " + sentence);
    }
    return wrong;
}

/// Every file is the old or the new one, and those that belong together are all there or none.
std::string Trial::checkFiles(const Picture& left, bool mayLeaveUnfinished) const
{
    std::string wrong;
    for (const auto& [name, content] : left) {
        if (!has(m_before, name, content) && !has(m_after, name, content) &&
            !(mayLeaveUnfinished && isUnfinished(name)))
            wrong += line("  neither old nor new: " + name + " " + content);
    }
    for (const auto& [name, content] : m_before) {
        if (!left.contains(name))
            wrong += line("  lost: " + name);
    }
    if (m_act.wholeFolder.empty())
        return wrong;
    const bool complete = left.contains(m_act.wholeFolder + "logbook.json");
    for (const auto& [name, content] : m_after) {
        const bool ours = name.starts_with(m_act.wholeFolder) && !m_before.contains(name);
        if (ours && left.contains(name) != complete && !(mayLeaveUnfinished && !complete))
            wrong +=
                line((complete ? "  complete, but missing: " : "  incomplete, but there: ") + name);
    }
    return wrong;
}

std::string Trial::checkDone(const Picture& left, const Outcome& outcome) const
{
    if (!outcome.copyFailed)
        return differences(left, m_after);
    return checkSentence(*outcome.copyFailed) +
           differences(withoutCopies(left), withoutCopies(m_after));
}

std::string Trial::checkRefused(const Picture& left, const Problem& problem,
                                bool mayLeaveUnfinished) const
{
    std::string wrong = checkSentence(problem) + checkFiles(left, mayLeaveUnfinished);
    const std::string sentence = problem.sentence();
    const bool saysSaved = sentence.find("may have been saved") != sentence.npos ||
                           sentence.find("is written") != sentence.npos;
    if (left == m_after && left != m_before && !saysSaved)
        wrong += line("  is saved, but says: " + sentence);
    return wrong;
}

/// With the disk in order again, the act succeeds.
std::string Trial::checkRetry(const Picture& left)
{
    if (withoutUnfinished(left) != m_before)
        return {};
    const Outcome again = runUndisturbed();
    if (!again.done)
        return line("  again: " + again.done.error().sentence());
    const std::string wrong =
        differences(withoutUnfinished(pictureOf(m_folder)), withoutUnfinished(m_after));
    return wrong.empty() ? wrong : line("  again:") + wrong;
}

std::string Trial::checkLeft(const Fault& fault, const Outcome& outcome)
{
    const bool removesNothing =
        fault.error == EIO && (fault.lasting || FaultEngine::only().firedAt() == Call::remove);
    std::string wrong = m_act.migrates ? std::string() : checkOpens(m_folder);
    const Picture left = pictureOf(m_folder);
    if (outcome.done && removesNothing)
        wrong += checkDone(withoutUnfinished(left), outcome);
    else if (outcome.done)
        wrong += checkDone(fault.error == EIO ? withoutJournals(left) : left, outcome);
    else
        wrong += checkRefused(left, outcome.done.error(), removesNothing) + checkRetry(left);
    if (m_act.migrates)
        wrong += checkOpens(m_folder);
    return wrong;
}

std::string Trial::fault(const Fault& fault)
{
    restore();
    Outcome outcome;
    {
        const FaultyFiles files;
        FaultEngine::only().arm(m_folder, fault);
        outcome = m_act.run(m_folder);
        FaultEngine::only().disarm();
    }
    if (!FaultEngine::only().fired())
        return line(m_act.name + ": no call " + std::to_string(fault.at));
    ++totals().faults;
    const std::string wrong = checkLeft(fault, outcome);
    if (wrong.empty())
        return wrong;
    return line(m_act.name + ", call " + std::to_string(fault.at) + " of " +
                std::to_string(m_calls.size()) + (fault.error == EIO ? ", EIO" : ", ENOSPC") +
                (fault.lasting ? ", lasting" : "") + (fault.half ? ", half written" : "") + ": " +
                (outcome.done ? "done" : outcome.done.error().sentence())) +
           wrong;
}

/// A change can be saved.
std::string Trial::checkWrites(const std::string& folder) const
{
    if (!fs::exists(logbookIn(folder)))
        return {};
    const UndisturbedFiles files(folder);
    const auto save = [&]() -> Done {
        auto logbook = LogbookFile::open(logbookIn(folder), Access::write, clockOfTests);
        HOLDBAND_TRY(logbook);
        auto change = store::Change::begin(**logbook, saying("afterwards"));
        HOLDBAND_TRY(change);
        LogbookSettings settings;
        settings.currency = "XTS";
        HOLDBAND_TRY(store::writeSettings(*change, settings));
        return change->commit();
    };
    const Done saved = save();
    return saved ? std::string() : line("  afterwards: " + saved.error().sentence());
}

std::string Trial::checkSurvivor(const PowerModel& model, const Outcome& outcome,
                                 std::uint64_t seed)
{
    ++totals().losses;
    clearFolder(m_survived);
    model.lose(seed, m_survived);
    if (seed % 3 != 0)
        leaveLock(logbookIn(m_survived), seed % 3 == 1);
    std::string wrong = m_act.migrates ? std::string() : checkOpens(m_survived);
    const Picture left = withoutUnfinished(pictureOf(m_survived));
    if (!outcome.done)
        wrong += checkFiles(left, true);
    else if (outcome.copyFailed)
        wrong += differences(withoutCopies(left), withoutCopies(m_after));
    else
        wrong += differences(left, withoutUnfinished(m_after));
    if (m_act.migrates)
        wrong += checkOpens(m_survived);
    return wrong + checkWrites(m_survived);
}

std::string Trial::powerLoss(long at, std::uint64_t seed)
{
    restore();
    PowerModel model(m_folder);
    Outcome outcome;
    {
        const FaultyFiles files;
        FaultEngine::only().armPowerLoss(m_folder, model, at);
        outcome = m_act.run(m_folder);
        FaultEngine::only().disarm();
    }
    const std::string wrong = checkSurvivor(model, outcome, seed);
    if (wrong.empty())
        return wrong;
    return line(m_act.name + ", power lost at call " + std::to_string(at) + " of " +
                std::to_string(m_calls.size()) + ", seed " + std::to_string(seed) + ": " +
                (outcome.done ? "was done" : "was under way")) +
           wrong;
}

std::string Trial::failedSync(long at, std::uint64_t seed)
{
    restore();
    PowerModel model(m_folder);
    Outcome outcome;
    {
        const FaultyFiles files;
        FaultEngine::only().armFailedSync(m_folder, model, {at, EIO});
        outcome = m_act.run(m_folder);
        FaultEngine::only().disarm();
    }
    ++totals().faults;
    const std::string wrong = checkSurvivor(model, outcome, seed);
    if (wrong.empty())
        return wrong;
    return line(m_act.name + ", sync failed at call " + std::to_string(at) + " of " +
                std::to_string(m_calls.size()) + ", seed " + std::to_string(seed) + ": " +
                (outcome.done ? "done" : outcome.done.error().sentence())) +
           wrong;
}

} // namespace holdband::faults
