// Texts for people in the language they chose. The English text stands in the code and is the key
// of the catalogue (resources/translations); where no catalogue is loaded, it is what is said. What
// programs read (JSON, CSV, names of commands and columns) is no phrase.
//
//     Phrase::tr("left the band %1").with(times)
//     Phrase::counted("%n readings are new", "%n reading is new", count)
//
// One phrase is one whole sentence or label: other languages put words in another order.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

/// Tells the reader of the catalogue which context a class's texts belong to; nothing to the
/// compiler.
#define HOLDBAND_CATALOGUE(context)

namespace holdband {

class Phrase {
    HOLDBAND_CATALOGUE(Phrase)

public:
    /// `remark` parts two meanings of one English text and is a word to the translator.
    static Phrase tr(const char* english, const char* remark = nullptr);

    /// With the plural forms of the language; %n is the count. In English `one` for one, else
    /// `many`.
    static Phrase counted(const char* many, const char* one, std::uint64_t count);

    /// With the places %1 to %9 filled in order. What stands in a part is never taken for a place.
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
