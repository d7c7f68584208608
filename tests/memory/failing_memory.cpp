// Loaded before a program: lets the allocation with the number in PUMPWRIGHT_FAILING_ALLOCATION fail, and
// writes into the file PUMPWRIGHT_ALLOCATIONS_FILE how many there were.

#include <dlfcn.h>
#include <fcntl.h>
#include <unistd.h>

#include <atomic>
#include <cerrno>
#include <cstddef>
#include <cstdio>
#include <cstdlib>

// The C library's own allocator, by the names under which it can be reached past the ones below.
extern "C" void* __libc_malloc(std::size_t size);
extern "C" void* __libc_calloc(std::size_t count, std::size_t size);
extern "C" void* __libc_realloc(void* memory, std::size_t size);

namespace {

std::atomic<long> count{0};
long failing = -1;

bool fails() {
    const bool yes = ++count == failing;
    errno = yes ? ENOMEM : errno;
    return yes;
}

using Main = int(int, char**, char**);
Main* programMain = nullptr;

int countedMain(int argc, char** argv, char** environment) {
    const char* number = std::getenv("PUMPWRIGHT_FAILING_ALLOCATION");
    failing = number ? std::strtol(number, nullptr, 10) : -1;
    count = 0;
    return programMain(argc, argv, environment);
}

__attribute__((destructor)) void end() {
    const long all = count;
    const char* path = std::getenv("PUMPWRIGHT_ALLOCATIONS_FILE");
    const int file = path ? ::open(path, O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600) : -1;
    if (file >= 0) {
        ::dprintf(file, "%ld\n", all);
        ::close(file);
    }
}

} // namespace

extern "C" void* malloc(std::size_t size) {
    return fails() ? nullptr : __libc_malloc(size);
}
extern "C" void* calloc(std::size_t number, std::size_t size) {
    return fails() ? nullptr : __libc_calloc(number, size);
}
extern "C" void* realloc(void* memory, std::size_t size) {
    return fails() ? nullptr : __libc_realloc(memory, size);
}

extern "C" int __libc_start_main(Main* main, int argc, char** argv, void (*begin)(), void (*end)(),
                                 void (*rest)(), void* stack) {
    using Start = int(Main*, int, char**, void (*)(), void (*)(), void (*)(), void*);
    programMain = main;
    auto* const start = reinterpret_cast<Start*>(::dlsym(RTLD_NEXT, "__libc_start_main"));
    return start(countedMain, argc, argv, begin, end, rest, stack);
}
