// Recognises a packed file by its first bytes; its name says nothing.
#pragma once

#include "core/problem.h"

#include <string_view>

namespace holdband {

enum class ContainerKind { none, gzip, zip };

/// Problem (data): a packed file or a workbook of a kind that is not read. `head`: the first 16
/// bytes at least, fewer if the file is shorter.
Result<ContainerKind> containerKindOf(std::string_view head);

/// Whether an unpacked text is a container again, or an archive of files (tar). `head`: the first
/// 512 bytes at least, fewer if it is shorter.
bool isContainerAgain(std::string_view head);

} // namespace holdband
