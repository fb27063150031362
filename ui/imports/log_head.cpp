#include "ui/imports/log_head.h"

#include "core/intake/dialect.h"
#include "core/intake/encoding.h"
#include "core/intake/source_file.h"

namespace holdband::ui {

Result<LogHead> readHead(const std::string& path)
{
    auto file = SourceFile::open(path);
    if (!file)
        return failure(file.error());
    const auto piece = file->next();
    if (!piece)
        return failure(piece.error());
    const bool whole = file->bytesRead() >= file->size();
    Decoder decoder;
    std::string_view text = decoder.decode(*piece, whole);
    Decoder windows(Encoding::windows1252);
    if (decoder.contradicted())
        text = windows.decode(*piece, whole);
    LogRequest request;
    request.path = path;
    const auto dialect = findDialect(text, whole, request);
    if (!dialect)
        return failure(dialect.error());
    LogHead head;
    for (std::size_t i = 0; i < dialect->header.size(); ++i) {
        if (!dialect->header[i].empty())
            (dialect->time.has(i) ? head.timeHeaders : head.headers).push_back(dialect->header[i]);
    }
    return head;
}

} // namespace holdband::ui
