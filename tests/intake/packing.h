// Makes gzip files and zip archives for tests, sound ones and broken ones.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>
#include <zlib.h>

namespace holdband::test {

/// Window bits as deflateInit2 takes them: 15 + 16 for gzip, -15 for the bytes alone.
inline std::string deflatedBy(std::string_view text, int windowBits)
{
    z_stream z{};
    deflateInit2(&z, Z_BEST_COMPRESSION, Z_DEFLATED, windowBits, 8, Z_DEFAULT_STRATEGY);
    std::string packed(deflateBound(&z, text.size()) + 64, '\0');
    z.next_in = reinterpret_cast<Bytef*>(const_cast<char*>(text.data()));
    z.avail_in = static_cast<uInt>(text.size());
    z.next_out = reinterpret_cast<Bytef*>(packed.data());
    z.avail_out = static_cast<uInt>(packed.size());
    deflate(&z, Z_FINISH);
    packed.resize(z.total_out);
    deflateEnd(&z);
    return packed;
}

inline std::string gzipped(std::string_view text)
{
    return deflatedBy(text, MAX_WBITS + 16);
}

/// One file for an archive; what is not sound is set by the test.
struct ZippedFile {
    std::string name;
    std::string text;
    unsigned method = 8;       ///< 0: stored
    unsigned flags = 0;        ///< 1: has a password
    std::uint32_t wrongBy = 0; ///< added to the checksum
};

inline std::string zipped(const std::vector<ZippedFile>& files)
{
    const auto number = [](std::uint64_t value, int bytes) {
        std::string text;
        for (; bytes > 0; --bytes, value >>= 8)
            text += static_cast<char>(value & 0xFF);
        return text;
    };
    std::string archive, directory;
    for (const ZippedFile& file : files) {
        const std::string packed = file.method == 8 ? deflatedBy(file.text, -MAX_WBITS) : file.text;
        const auto crc = static_cast<std::uint32_t>(
            crc32_z(0, reinterpret_cast<const Bytef*>(file.text.data()), file.text.size()));
        const std::string common = number(20, 2) + number(file.flags, 2) + number(file.method, 2) +
                                   number(0, 4) + number(crc + file.wrongBy, 4) +
                                   number(packed.size(), 4) + number(file.text.size(), 4) +
                                   number(file.name.size(), 2) + number(0, 2);
        directory += "PK\x01\x02" + number(20, 2) + common + number(0, 10) +
                     number(archive.size(), 4) + file.name;
        archive += "PK\x03\x04" + common + file.name + packed;
    }
    const std::size_t at = archive.size();
    return archive + directory + "PK\x05\x06" + number(0, 4) + number(files.size(), 2) +
           number(files.size(), 2) + number(directory.size(), 4) + number(at, 4) + number(0, 2);
}

} // namespace holdband::test
