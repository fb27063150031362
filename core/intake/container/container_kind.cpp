#include "core/intake/container/container_kind.h"

#include "core/text/phrase.h"

#include <algorithm>
#include <array>

namespace holdband {

using namespace std::string_view_literals;

namespace {

/// The first bytes of bzip2, xz, zstd, 7z and rar files.
constexpr std::array packedOtherwise{"BZh91AY&SY"sv,
                                     "\xFD"
                                     "7zXZ\0"sv,
                                     "\x28\xB5\x2F\xFD"sv, "7z\xBC\xAF\x27\x1C"sv,
                                     "Rar!\x1A\x07"sv};

/// A compound file: the workbooks of the last century, and today's with a password.
constexpr std::string_view compoundFile = "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1"sv;

/// Of a tar archive, behind the first file's name and numbers.
constexpr std::string_view tarMark = "ustar"sv;
constexpr std::size_t tarMarkAt = 257;

bool isPackedOtherwise(std::string_view head)
{
    return std::any_of(packedOtherwise.begin(), packedOtherwise.end(),
                       [&](std::string_view mark) { return head.starts_with(mark); });
}

} // namespace

Result<ContainerKind> containerKindOf(std::string_view head)
{
    if (head.starts_with("\x1F\x8B"sv))
        return ContainerKind::gzip;
    if (head.starts_with("PK\x03\x04"sv) || head.starts_with("PK\x05\x06"sv))
        return ContainerKind::zip;
    if (head.starts_with("PK\x07\x08"sv))
        return dataProblem(Phrase::tr("this is a part of an archive in several parts"), {},
                           Phrase::tr("unpack it first"));
    if (head.starts_with(compoundFile))
        return dataProblem(
            Phrase::tr("this is a workbook with a password, or of the old format (.xls)"), {},
            Phrase::tr("save it as .xlsx without a password, or as CSV"));
    if (isPackedOtherwise(head))
        return dataProblem(Phrase::tr("this file is packed in a way that can't be read"), {},
                           Phrase::tr("unpack it first, or pack it as gzip or zip"));
    return ContainerKind::none;
}

bool isContainerAgain(std::string_view head)
{
    const auto kind = containerKindOf(head);
    const bool tar = head.size() > tarMarkAt && head.substr(tarMarkAt).starts_with(tarMark);
    return tar || !kind || *kind != ContainerKind::none;
}

} // namespace holdband
