// A logbook of which one bit is flipped, and what every command then says.
#pragma once

#include "tests/damage/commands_child.h"

#include <QTemporaryDir>
#include <cstdint>
#include <string>
#include <vector>

namespace holdband::damage {

/// A sound logbook, the commands that read it, and those that write in it. "LOGBOOK" and "FOLDER"
/// in their arguments stand for the copy and for a place for files.
struct World {
    std::string name;
    std::string logbook; ///< its bytes
    std::vector<Arguments> reads;
    std::vector<Arguments> writes;
    std::vector<std::pair<std::string, std::string>> files; ///< for the writes: name, contents
};

/// Asks a copy with flipped bits everything that the sound logbook was asked, too.
class DamagedCopy {
public:
    explicit DamagedCopy(World world);

    const World& world() const { return m_world; }
    std::size_t pageSize() const;
    std::size_t pages() const { return m_world.logbook.size() / pageSize(); }

    /// Flips the bit and asks; with `writes` also after a change. Returns what is wrong, a line
    /// each: a crash, a hang, a figure that is different without a word. Empty: the bit was noticed
    /// or harmless.
    std::string flip(std::size_t bit, bool writes);

    int noticed() const { return m_noticed; }   ///< how many flips some command refused
    int harmless() const { return m_harmless; } ///< how many changed no answer

private:
    struct Everything {
        Answers reads;
        std::string exported; ///< what the command `export` wrote
        bool wrote = false;
        Answers writes;
        Answers readsAfterwards;
    };
    Everything ask(const std::string& logbook, bool writes);
    std::vector<Arguments> placed(const std::vector<Arguments>& commands) const;
    std::string wrongIn(const Everything& asked);
    std::string wrongAfterwards(const Everything& asked, bool said) const;

    World m_world;
    QTemporaryDir m_folder;
    Everything m_sound;
    int m_noticed = 0;
    int m_harmless = 0;
};

} // namespace holdband::damage
