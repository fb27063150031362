// Texts for people in the language they chose. The English text is written in the code and is the
// key of the catalogue (resources/translations); without a catalogue it is shown as it is. Text
// that programs read (JSON, CSV, names of commands and columns) is no phrase.
//
//     Phrase::tr("left the band %1").with(times)
//     Phrase::counted("%n readings are new", "%n reading is new", count)
//
// One phrase is one full sentence or label, because other languages order words differently.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Sets the catalogue context of a class's texts for the tool that extracts them; no effect at
/// compile time.
#define HOLDBAND_CATALOGUE(context)

namespace holdband {

class Phrase {
    HOLDBAND_CATALOGUE(Phrase)

public:
    /// `remark` separates two meanings of one English text and is a note for the translator.
    static Phrase tr(const char* english, const char* remark = nullptr);

    /// Uses the plural forms of the language; %n is the count. In English `one` for 1, else `many`.
    static Phrase counted(const char* many, const char* one, std::uint64_t count);

    /// Fills the placeholders %1 to %9 in order. A '%1' inside a part is not treated as a
    /// placeholder.
    template <typename... Part> std::string with(const Part&... parts) const
    {
        return filled({std::string_view(parts)...});
    }

    const std::string& text() const { return m_text; }
    operator std::string() const { return m_text; }

private:
    explicit Phrase(std::string text) : m_text(std::move(text)) {}

    std::string filled(const std::vector<std::string_view>& parts) const;

    std::string m_text;
};

} // namespace holdband
