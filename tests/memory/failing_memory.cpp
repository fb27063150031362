// Loaded before a program (LD_PRELOAD): lets one of its allocations fail, or all from one on.
//
// HOLDBAND_MEMORY_FAILS=AT fails the AT-th allocation, "AT+" that one and all after it. Without it
// nothing fails. HOLDBAND_MEMORY_COUNT=FILE gets the number of allocations at the program's end.
// Under the address sanitizer, `new` does not use malloc, so that both are replaced.
#include <atomic>
#include <cstdio>
#include <cstdlib>
#include <dlfcn.h>
#include <new>

namespace {

std::atomic<long> asked{0};
std::atomic<bool> counts{false}; ///< from the start of main on
long failsAt = 0;
bool failsOn = false;
thread_local bool isInside = false; ///< `new` that asks malloc is one allocation

bool mayHave()
{
    if (!counts.load(std::memory_order_relaxed) || isInside)
        return true;
    const long now = ++asked;
    return failsAt == 0 || now < failsAt || (now > failsAt && !failsOn);
}

template <typename Function>
Function next(const char* name)
{
    return reinterpret_cast<Function>(dlsym(RTLD_NEXT, name));
}

void* newWithin(std::size_t size, const char* name)
{
    if (!mayHave())
        throw std::bad_alloc();
    using New = void* (*)(std::size_t);
    const bool before = isInside;
    isInside = true;
    void* const memory = next<New>(name)(size);
    isInside = before;
    return memory;
}

struct Counting {
    Counting()
    {
        const char* at = std::getenv("HOLDBAND_MEMORY_FAILS");
        char* end = nullptr;
        failsAt = at ? std::strtol(at, &end, 10) : 0;
        failsOn = end && *end == '+';
        counts = true;
    }
    ~Counting()
    {
        counts = false;
        const char* path = std::getenv("HOLDBAND_MEMORY_COUNT");
        std::FILE* file = path ? std::fopen(path, "w") : nullptr;
        if (!file)
            return;
        std::fprintf(file, "%ld", asked.load());
        std::fclose(file);
    }
};

Counting counting;

} // namespace

extern "C" void* malloc(std::size_t size)
{
    static auto* const real = next<void* (*)(std::size_t)>("malloc");
    return mayHave() ? real(size) : nullptr;
}

extern "C" void* realloc(void* memory, std::size_t size)
{
    static auto* const real = next<void* (*)(void*, std::size_t)>("realloc");
    return mayHave() ? real(memory, size) : nullptr;
}

void* operator new(std::size_t size)
{
    return newWithin(size, "_Znwm");
}

void* operator new[](std::size_t size)
{
    return newWithin(size, "_Znam");
}
