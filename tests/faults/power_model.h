// What a disk holds after the power went: everything that was synced, and any part of the rest.
//
// Bytes: of every write since the file's last sync, any of its 512-byte sectors, in any version;
// any change of the size. Names: of every creation, renaming and removal since the folder's last
// sync, any. That is harsher than file systems with a journal, which keep an order.
#pragma once

#include <cstdint>
#include <map>
#include <memory>
#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace holdband::faults {

class PowerModel {
public:
    /// Everything that is in the folder now counts as synced.
    explicit PowerModel(const std::string& root);

    void created(const std::string& path);
    void madeFolder(const std::string& path);
    void wrote(const std::string& path, std::int64_t at, std::string_view bytes);
    void truncated(const std::string& path, std::int64_t size);
    void synced(const std::string& path);
    void folderSynced(const std::string& folder);
    void renamed(const std::string& from, const std::string& to);
    void removed(const std::string& path);

    /// Writes one of the possible survivors into `target`, which must be an empty folder.
    void lose(std::uint64_t seed, const std::string& target) const;

private:
    struct Pending {
        std::int64_t at;
        std::string bytes;
        bool truncates = false; ///< to the size `at`
    };
    struct Node {
        bool folder = false;
        std::string durable;
        std::vector<Pending> pending;
    };
    using NodePtr = std::shared_ptr<Node>;
    using Names = std::map<std::string, NodePtr>;
    /// Takes a name away, gives a node a name, or both.
    struct NameChange {
        std::string away;
        std::string to;
        NodePtr node;
    };

    static void apply(const NameChange& change, Names& names);
    static void apply(const Pending& write, std::string& bytes);
    static std::string survivor(const Node& node, std::mt19937_64& random, double share);
    void changeName(NameChange change);
    NodePtr nodeOf(const std::string& path) const;

    std::string m_root;
    Names m_now;
    Names m_durable;
    std::vector<NameChange> m_pending;
};

} // namespace holdband::faults
