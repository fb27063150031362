// SHA-256 of imported files, of the seal and of the recorded changes. Short texts use Qt's code;
// OpenSSL uses the processor's SHA instructions where there are any, but takes a millisecond to set
// up.
#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>

struct evp_md_ctx_st;

namespace holdband {

class Digest {
public:
    Digest() = default;

    void add(std::string_view bytes);
    /// 64 hexadecimal digits of everything added; nothing can be added afterwards. Empty if the
    /// library failed (no memory), which matches no digest on record.
    std::string hex();

private:
    void addToLong(std::string_view bytes);
    std::string longHex();

    struct Free {
        void operator()(evp_md_ctx_st* context) const;
    };
    std::string m_short;                            ///< everything added, while it is short
    std::unique_ptr<evp_md_ctx_st, Free> m_context; ///< absent until the text gets long
    bool m_works = true;
};

std::string digestOf(std::string_view bytes);

} // namespace holdband
