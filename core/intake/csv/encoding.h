// Converts a file's bytes to UTF-8, piece by piece. The encoding is that of the byte-order mark;
// else UTF-16, detected by the positions of zero bytes; else UTF-8 if all of it is valid; else
// Windows-1252. No statistics.
#pragma once

#include <QStringDecoder>
#include <optional>
#include <string>
#include <string_view>

namespace holdband {

enum class Encoding { utf8, utf16le, utf16be, windows1252 };

/// "UTF-8", "UTF-16 LE", …
std::string_view encodingName(Encoding encoding);

/// Checks UTF-8 (RFC 3629) in pieces; a piece may end inside a character.
class Utf8Check {
public:
    /// False from the first invalid byte on.
    bool take(std::string_view bytes);
    /// Whether a character is incomplete.
    bool isOpen() const { return m_needed > 0; }
    /// Whether there was a byte outside ASCII.
    bool sawLetters() const { return m_sawLetters; }

private:
    bool takeByte(unsigned char byte);

    int m_needed = 0; ///< continuation bytes to come
    unsigned char m_low = 0x80;
    unsigned char m_high = 0xBF; ///< bounds of the next one
    bool m_sawLetters = false;
};

class Decoder {
public:
    /// Forced: the encoding that an earlier reading of the same file found.
    explicit Decoder(std::optional<Encoding> forced = std::nullopt) : m_forced(forced) {}

    /// The piece as UTF-8, valid until the next call (and as long as `bytes`). The byte-order mark
    /// and UTF-16 are detected in the first piece, so it should have a few hundred bytes if the
    /// file is that long.
    std::string_view decode(std::string_view bytes, bool isLast);

    /// Non-ASCII text was returned as UTF-8, and then invalid bytes followed: the file has to be
    /// read again, forced to Windows-1252.
    bool contradicted() const { return m_contradicted; }
    Encoding encoding() const { return m_encoding; }
    bool hadMark() const { return m_mark; }

private:
    std::string_view begin(std::string_view bytes);
    std::string_view decodeUtf8(std::string_view bytes, bool isLast);
    std::string_view decodeWindows(std::string_view bytes);
    std::string_view decodeUtf16(std::string_view bytes);

    std::optional<Encoding> m_forced;
    Encoding m_encoding = Encoding::utf8;
    bool m_begun = false;
    bool m_mark = false;
    bool m_contradicted = false;
    Utf8Check m_check;
    QStringDecoder m_utf16;
    std::string m_out;
};

} // namespace holdband
