// SHA-256 by OpenSSL, which uses the processor's own instructions for it where there are any: of
// the files that are read, of the seal, of what a change recorded.
#pragma once

#include <memory>
#include <string>
#include <string_view>

struct evp_md_ctx_st;

namespace holdband {

class Digest {
public:
    Digest();

    void add(std::string_view bytes);
    /// 64 hexadecimal digits of all that was added; nothing can be added after it. Empty where the
    /// library refused its work (no memory), which matches no digest on record.
    std::string hex();

private:
    struct Free {
        void operator()(evp_md_ctx_st* context) const;
    };
    std::unique_ptr<evp_md_ctx_st, Free> m_context;
    bool m_works = false;
};

std::string digestOf(std::string_view bytes);

} // namespace holdband
