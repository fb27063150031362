// SHA-256 of the files that are read, of the seal, of what a change recorded. Short texts by Qt's
// code; OpenSSL uses the processor's own instructions where there are any, but takes a millisecond
// to get ready.
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
    /// 64 hexadecimal digits of all that was added; nothing can be added after it. Empty where the
    /// library refused its work (no memory), which matches no digest on record.
    std::string hex();

private:
    void addToLong(std::string_view bytes);
    std::string longHex();

    struct Free {
        void operator()(evp_md_ctx_st* context) const;
    };
    std::string m_short;                            ///< all of it, while that is little
    std::unique_ptr<evp_md_ctx_st, Free> m_context; ///< absent until it is more
    bool m_works = true;
};

std::string digestOf(std::string_view bytes);

} // namespace holdband
