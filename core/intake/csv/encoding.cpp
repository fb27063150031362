#include "core/intake/csv/encoding.h"

#include <array>
#include <cstdint>
#include <cstring>

namespace holdband {

namespace {

// Windows-1252, 0x80 … 0x9F (WHATWG Encoding Standard, index windows-1252; the five codes without a
// letter mean the control character of the same number). 0xA0 … 0xFF are the same as in Unicode.
constexpr std::array<std::uint16_t, 32> windowsUpper{
    0x20AC, 0x81,   0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021, 0x02C6, 0x2030, 0x0160,
    0x2039, 0x0152, 0x8D,   0x017D, 0x8F,   0x90,   0x2018, 0x2019, 0x201C, 0x201D, 0x2022,
    0x2013, 0x2014, 0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x9D,   0x017E, 0x0178};

void appendUtf8(std::string& text, unsigned code)
{
    const auto put = [&text](unsigned byte) { text += static_cast<char>(byte); };
    if (code < 0x80)
        return put(code);
    if (code < 0x800) {
        put(0xC0 | (code >> 6));
        return put(0x80 | (code & 0x3F));
    }
    put(0xE0 | (code >> 12));
    put(0x80 | (code >> 6 & 0x3F));
    put(0x80 | (code & 0x3F));
}

/// Detected by the zero bytes at its start: mostly-ASCII text has one in each pair.
std::optional<Encoding> utf16ByZeros(std::string_view bytes)
{
    const std::size_t pairs = std::min<std::size_t>(bytes.size(), 4096) / 2;
    std::size_t first = 0, second = 0;
    for (std::size_t i = 0; i < pairs; ++i) {
        first += bytes[2 * i] == '\0';
        second += bytes[2 * i + 1] == '\0';
    }
    if (pairs < 4)
        return std::nullopt;
    if (second * 2 > pairs && first * 20 < pairs)
        return Encoding::utf16le;
    if (first * 2 > pairs && second * 20 < pairs)
        return Encoding::utf16be;
    return std::nullopt;
}

} // namespace

std::string_view encodingName(Encoding encoding)
{
    switch (encoding) {
    case Encoding::utf8:
        return "UTF-8";
    case Encoding::utf16le:
        return "UTF-16 LE";
    case Encoding::utf16be:
        return "UTF-16 BE";
    case Encoding::windows1252:
        return "Windows-1252";
    }
    return {};
}

bool Utf8Check::takeByte(unsigned char byte)
{
    if (m_needed > 0) {
        const bool fits = byte >= m_low && byte <= m_high;
        --m_needed;
        m_low = 0x80;
        m_high = 0xBF;
        return fits;
    }
    if (byte < 0x80)
        return true;
    m_sawLetters = true;
    m_needed = byte >= 0xF0 ? 3 : byte >= 0xE0 ? 2 : 1;
    // RFC 3629 §4: no overlong forms, no surrogates, nothing past U+10FFFF.
    m_low = byte == 0xE0 ? 0xA0 : byte == 0xF0 ? 0x90 : 0x80;
    m_high = byte == 0xED ? 0x9F : byte == 0xF4 ? 0x8F : 0xBF;
    return byte >= 0xC2 && byte <= 0xF4;
}

bool Utf8Check::take(std::string_view bytes)
{
    constexpr std::uint64_t upperBits = 0x8080808080808080;
    for (std::size_t i = 0; i < bytes.size();) {
        std::uint64_t eight = 0;
        if (m_needed == 0 && i + 8 <= bytes.size()) {
            std::memcpy(&eight, bytes.data() + i, 8);
            if ((eight & upperBits) == 0) {
                i += 8;
                continue;
            }
        }
        if (!takeByte(static_cast<unsigned char>(bytes[i++])))
            return false;
    }
    return true;
}

std::string_view Decoder::decode(std::string_view bytes, bool isLast)
{
    if (!m_begun)
        bytes = begin(bytes);
    switch (m_encoding) {
    case Encoding::utf8:
        return decodeUtf8(bytes, isLast);
    case Encoding::windows1252:
        return decodeWindows(bytes);
    default:
        return decodeUtf16(bytes);
    }
}

std::string_view Decoder::begin(std::string_view bytes)
{
    m_begun = true;
    const auto mark = [&](std::string_view which, Encoding encoding) {
        if (!bytes.starts_with(which))
            return false;
        m_encoding = encoding;
        bytes.remove_prefix(which.size());
        return m_mark = true;
    };
    using namespace std::string_view_literals;
    if (m_forced)
        m_encoding = *m_forced;
    else if (!mark("\xEF\xBB\xBF"sv, Encoding::utf8) && !mark("\xFF\xFE"sv, Encoding::utf16le) &&
             !mark("\xFE\xFF"sv, Encoding::utf16be))
        m_encoding = utf16ByZeros(bytes).value_or(Encoding::utf8);
    if (m_encoding == Encoding::utf16le)
        m_utf16 = QStringDecoder(QStringConverter::Utf16LE);
    if (m_encoding == Encoding::utf16be)
        m_utf16 = QStringDecoder(QStringConverter::Utf16BE);
    return bytes;
}

std::string_view Decoder::decodeUtf8(std::string_view bytes, bool isLast)
{
    const bool lettersBefore = m_check.sawLetters();
    const bool good = m_check.take(bytes) && !(isLast && m_check.isOpen());
    if (good)
        return bytes;
    if (lettersBefore) {
        m_contradicted = true;
        return bytes;
    }
    m_encoding = Encoding::windows1252;
    return decodeWindows(bytes);
}

std::string_view Decoder::decodeWindows(std::string_view bytes)
{
    m_out.clear();
    for (const char c : bytes) {
        const auto byte = static_cast<unsigned char>(c);
        if (byte < 0x80)
            m_out += c;
        else
            appendUtf8(m_out, byte < 0xA0 ? windowsUpper[byte - 0x80u] : byte);
    }
    return m_out;
}

std::string_view Decoder::decodeUtf16(std::string_view bytes)
{
    const QString text =
        m_utf16.decode(QByteArrayView(bytes.data(), static_cast<qsizetype>(bytes.size())));
    m_out = text.toStdString();
    return m_out;
}

} // namespace holdband
