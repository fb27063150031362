#include "tests/faults/power_model.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace holdband::faults {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t sector = 512;

std::string bytesOf(const fs::path& path)
{
    std::string bytes(fs::file_size(path), '\0');
    std::ifstream(path, std::ios::binary)
        .read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

std::string folderIn(const std::string& path)
{
    return fs::path(path).parent_path().string();
}

bool chance(std::mt19937_64& random, double share)
{
    return std::uniform_real_distribution<>(0.0, 1.0)(random) < share;
}

} // namespace

PowerModel::PowerModel(const std::string& root) : m_root(root)
{
    for (const auto& entry : fs::recursive_directory_iterator(root)) {
        auto node = std::make_shared<Node>();
        node->folder = entry.is_directory();
        if (!node->folder)
            node->durable = bytesOf(entry.path());
        m_now[entry.path().string()] = node;
    }
    m_durable = m_now;
}

PowerModel::NodePtr PowerModel::nodeOf(const std::string& path) const
{
    const auto found = m_now.find(path);
    return found == m_now.end() ? nullptr : found->second;
}

void PowerModel::apply(const NameChange& change, Names& names)
{
    if (!change.away.empty())
        names.erase(change.away);
    if (change.node)
        names[change.to] = change.node;
}

void PowerModel::changeName(NameChange change)
{
    apply(change, m_now);
    m_pending.push_back(std::move(change));
}

void PowerModel::created(const std::string& path)
{
    if (!nodeOf(path))
        changeName({{}, path, std::make_shared<Node>()});
}

void PowerModel::madeFolder(const std::string& path)
{
    auto node = std::make_shared<Node>();
    node->folder = true;
    changeName({{}, path, std::move(node)});
}

void PowerModel::wrote(const std::string& path, std::int64_t at, std::string_view bytes)
{
    if (const NodePtr node = nodeOf(path))
        node->pending.push_back({at, std::string(bytes)});
}

void PowerModel::truncated(const std::string& path, std::int64_t size)
{
    if (const NodePtr node = nodeOf(path))
        node->pending.push_back({size, {}, true});
}

void PowerModel::apply(const Pending& write, std::string& bytes)
{
    const auto at = static_cast<std::size_t>(write.at);
    if (write.truncates) {
        bytes.resize(at, '\0');
        return;
    }
    bytes.resize(std::max(bytes.size(), at + write.bytes.size()), '\0');
    bytes.replace(at, write.bytes.size(), write.bytes);
}

void PowerModel::synced(const std::string& path)
{
    const NodePtr node = nodeOf(path);
    if (!node)
        return;
    for (const Pending& write : node->pending)
        apply(write, node->durable);
    node->pending.clear();
}

void PowerModel::folderSynced(const std::string& folder)
{
    std::erase_if(m_pending, [&](const NameChange& change) {
        if (folderIn(change.node ? change.to : change.away) != folder)
            return false;
        apply(change, m_durable);
        return true;
    });
}

void PowerModel::renamed(const std::string& from, const std::string& to)
{
    changeName({from, to, nodeOf(from)});
}

void PowerModel::removed(const std::string& path)
{
    if (nodeOf(path))
        changeName({path, {}, nullptr});
}

std::string PowerModel::survivor(const Node& node, std::mt19937_64& random, double share)
{
    std::string bytes = node.durable;
    for (const Pending& write : node.pending) {
        if (write.truncates) {
            if (chance(random, share))
                apply(write, bytes);
            continue;
        }
        for (std::size_t begin = 0; begin < write.bytes.size();) {
            const std::size_t place = static_cast<std::size_t>(write.at) + begin;
            const std::size_t end = std::min(begin + sector - place % sector, write.bytes.size());
            if (chance(random, share))
                apply({static_cast<std::int64_t>(place), write.bytes.substr(begin, end - begin)},
                      bytes);
            begin = end;
        }
    }
    return bytes;
}

void PowerModel::lose(std::uint64_t seed, const std::string& target) const
{
    std::mt19937_64 random(seed);
    constexpr double shares[] = {0.0, 0.2, 0.5, 0.8, 1.0};
    const double ofBytes = shares[random() % std::size(shares)];
    const double ofNames = shares[random() % std::size(shares)];
    Names names = m_durable;
    for (const NameChange& change : m_pending) {
        if (chance(random, ofNames))
            apply(change, names);
    }
    for (const auto& [path, node] : names) { // a folder comes before what is in it
        const std::string place = target + path.substr(m_root.size());
        if (!fs::is_directory(folderIn(place)))
            continue; // its folder was lost
        if (node->folder)
            fs::create_directory(place);
        else
            std::ofstream(place, std::ios::binary) << survivor(*node, random, ofBytes);
    }
}

} // namespace holdband::faults
