#include "tests/damage/damaged_copy.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>

namespace holdband::damage {

namespace {

namespace fs = std::filesystem;

void writeBytes(const std::string& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

/// Names and contents of all files in the folder.
std::string filesIn(const std::string& folder)
{
    std::vector<std::string> files;
    std::error_code none;
    for (const auto& entry : fs::recursive_directory_iterator(folder, none)) {
        if (!entry.is_regular_file())
            continue;
        std::ifstream in(entry.path(), std::ios::binary);
        files.push_back(entry.path().string() + "\n" +
                        std::string(std::istreambuf_iterator<char>(in), {}));
    }
    std::sort(files.begin(), files.end());
    std::string all;
    for (const std::string& file : files)
        all += file;
    return all;
}

bool isNoticed(const Answer& answer)
{
    return answer.status != 0 || answer.err.find("Damaged:") != std::string::npos;
}

bool anyNoticed(const Answers& answers)
{
    return std::any_of(answers.each.begin(), answers.each.end(), isNoticed);
}

std::string differences(const Answers& sound, const Answers& now,
                        const std::vector<Arguments>& commands)
{
    std::string wrong = now.broken.empty() ? std::string() : now.broken + "\n";
    for (std::size_t i = 0; i < commands.size(); ++i) {
        const Answer& answer = now.each[i];
        if (answer.status == 0 && answer.out != sound.each[i].out && !isNoticed(answer))
            wrong += "a different answer without a word: " + lineOf(commands[i]) + "\n";
        if (answer.status != 0 && answer.err.empty() && now.broken.empty())
            wrong += "refused without a word: " + lineOf(commands[i]) + "\n";
    }
    return wrong;
}

} // namespace

DamagedCopy::DamagedCopy(World world) : m_world(std::move(world))
{
    m_sound = ask(m_world.logbook, true);
    for (const Answers* answers : {&m_sound.reads, &m_sound.writes, &m_sound.readsAfterwards}) {
        EXPECT_EQ(answers->broken, "");
        for (const Answer& answer : answers->each)
            EXPECT_EQ(answer.status, 0) << answer.err;
    }
    EXPECT_NE(m_sound.exported, "");
}

std::size_t DamagedCopy::pageSize() const
{
    const auto byte = [&](std::size_t at) {
        return static_cast<std::size_t>(static_cast<unsigned char>(m_world.logbook.at(at)));
    };
    return byte(16) << 8 | byte(17); // https://www.sqlite.org/fileformat.html, section 1.3.2
}

std::vector<Arguments> DamagedCopy::placed(const std::vector<Arguments>& commands) const
{
    const std::string folder = m_folder.path().toStdString();
    std::vector<Arguments> all = commands;
    for (Arguments& command : all) {
        for (std::string& word : command) {
            if (word == "LOGBOOK")
                word = folder + "/garage.holdband";
            else if (word.starts_with("FOLDER"))
                word = folder + word.substr(6);
        }
    }
    return all;
}

DamagedCopy::Everything DamagedCopy::ask(const std::string& logbook, bool writes)
{
    const std::string folder = m_folder.path().toStdString();
    const std::string file = folder + "/garage.holdband";
    const std::string scratch = folder + "/answers";
    for (const auto& entry : fs::directory_iterator(folder))
        fs::remove_all(entry.path());
    for (const auto& [name, contents] : m_world.files)
        writeBytes(folder + "/" + name, contents);
    writeBytes(file, logbook);
    Everything all;
    const auto reads = placed(m_world.reads);
    all.reads = runInChild(reads, scratch);
    all.exported = filesIn(folder + "/exported");
    fs::remove_all(folder + "/exported");
    if (!writes)
        return all;
    all.wrote = true;
    all.writes = runInChild(placed(m_world.writes), scratch);
    all.readsAfterwards = runInChild(reads, scratch);
    return all;
}

std::string DamagedCopy::wrongIn(const Everything& asked)
{
    std::string wrong = differences(m_sound.reads, asked.reads, m_world.reads);
    const bool said = anyNoticed(asked.reads);
    if (asked.exported != m_sound.exported && !said)
        wrong += "a different export without a word\n";
    (said ? m_noticed : m_harmless) += 1;
    return asked.wrote ? wrong + wrongAfterwards(asked, said) : wrong;
}

std::string DamagedCopy::wrongAfterwards(const Everything& asked, bool said) const
{
    std::string wrong = differences(m_sound.writes, asked.writes, m_world.writes);
    const bool written = std::all_of(asked.writes.each.begin(), asked.writes.each.end(),
                                     [](const Answer& answer) { return answer.status == 0; });
    if (written)
        wrong += differences(m_sound.readsAfterwards, asked.readsAfterwards, m_world.reads);
    if (written && said && !anyNoticed(asked.readsAfterwards))
        wrong += "after a change the damage is not noticed any more\n";
    return wrong;
}

std::string DamagedCopy::flip(std::size_t bit, bool writes)
{
    std::string bytes = m_world.logbook;
    bytes.at(bit / 8) = static_cast<char>(bytes[bit / 8] ^ (1 << (bit % 8)));
    const std::string wrong = wrongIn(ask(bytes, writes));
    if (wrong.empty())
        return {};
    return m_world.name + ", bit " + std::to_string(bit) + " (page " +
           std::to_string(bit / 8 / pageSize() + 1) + ", byte " +
           std::to_string(bit / 8 % pageSize()) + "):\n" + wrong;
}

} // namespace holdband::damage
