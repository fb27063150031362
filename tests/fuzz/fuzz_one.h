// One input of a fuzz target: its properties hold, or the program aborts with a sentence. libFuzzer
// finds inputs (libfuzzer_main.cpp), and a plain program repeats stored ones (replay_main.cpp).
#pragma once

#include <concepts>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <span>
#include <string>
#include <string_view>

namespace holdband::fuzz {

/// Each target defines it in a file of its own.
void fuzzOne(std::span<const std::uint8_t> bytes);

/// Aborts, so that both the fuzzer and the replay report the input.
[[noreturn]] inline void broken(const char* property, const std::string& detail)
{
    std::fprintf(stderr, "property broken: %s\n%s\n", property, detail.c_str());
    std::abort();
}

inline void expect(bool holds, const char* property, const std::string& detail = {})
{
    if (!holds)
        broken(property, detail);
}

/// `detail` is called only where the property is broken.
template <std::invocable Detail>
void expect(bool holds, const char* property, const Detail& detail)
{
    if (!holds)
        broken(property, detail());
}

/// Numbers and texts taken from an input, one after the other; zeros after its end.
class Bytes {
public:
    explicit Bytes(std::span<const std::uint8_t> bytes) : m_bytes(bytes) {}

    bool atEnd() const { return m_bytes.empty(); }
    std::uint8_t byte()
    {
        if (m_bytes.empty())
            return 0;
        const std::uint8_t first = m_bytes.front();
        m_bytes = m_bytes.subspan(1);
        return first;
    }
    /// 0 … limit − 1
    std::size_t below(std::size_t limit) { return limit == 0 ? 0 : word() % limit; }
    std::uint16_t word()
    {
        const unsigned high = byte();
        return static_cast<std::uint16_t>(high << 8 | byte());
    }
    std::string_view line()
    {
        const std::string_view all = rest();
        const std::size_t end = all.find('\n');
        m_bytes = m_bytes.subspan(end == all.npos ? m_bytes.size() : end + 1);
        return all.substr(0, end);
    }
    std::string_view rest() const
    {
        return {reinterpret_cast<const char*>(m_bytes.data()), m_bytes.size()};
    }

private:
    std::span<const std::uint8_t> m_bytes;
};

} // namespace holdband::fuzz
