#include "core/digest.h"

#include <QCryptographicHash>
#include <array>
#include <openssl/evp.h>

namespace holdband {

namespace {

/// Below this size Qt's code is faster.
constexpr std::size_t shortBytes = 128 * 1024;

} // namespace

void Digest::Free::operator()(evp_md_ctx_st* context) const
{
    EVP_MD_CTX_free(context);
}

void Digest::add(std::string_view bytes)
{
    if (!m_works)
        return;
    if (!m_context && m_short.size() + bytes.size() <= shortBytes) {
        m_short += bytes;
        return;
    }
    if (!m_context) {
        m_context.reset(EVP_MD_CTX_new());
        m_works = m_context && EVP_DigestInit_ex(m_context.get(), EVP_sha256(), nullptr) == 1;
        addToLong(m_short);
    }
    addToLong(bytes);
}

void Digest::addToLong(std::string_view bytes)
{
    m_works = m_works && EVP_DigestUpdate(m_context.get(), bytes.data(), bytes.size()) == 1;
}

std::string Digest::hex()
{
    if (m_context || !m_works)
        return longHex();
    m_works = false;
    return QCryptographicHash::hash({m_short.data(), static_cast<qsizetype>(m_short.size())},
                                    QCryptographicHash::Sha256)
        .toHex()
        .toStdString();
}

std::string Digest::longHex()
{
    constexpr std::string_view digits = "0123456789abcdef";
    std::array<unsigned char, EVP_MAX_MD_SIZE> bytes;
    unsigned int size = 0;
    m_works = m_works && EVP_DigestFinal_ex(m_context.get(), bytes.data(), &size) == 1;
    std::string text;
    for (unsigned int i = 0; m_works && i < size; ++i) {
        text += digits[bytes[i] >> 4];
        text += digits[bytes[i] & 0xf];
    }
    m_works = false;
    return text;
}

std::string digestOf(std::string_view bytes)
{
    Digest digest;
    digest.add(bytes);
    return digest.hex();
}

} // namespace holdband
