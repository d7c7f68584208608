// Saving with every system call failing in turn, whoever makes it: the C library's functions are replaced by
// ones that count, and fail once when they are told to.

#include "app/desktop/document/document.h"
#include "core/files/circuit_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/temp_folder.h"

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstring>

using namespace pumpwright;

namespace {

/// Which call fails, of those of this thread from now on; none until it is set.
struct Failure {
    int at = -1;
    int reason = 0;
    int count = 0;
    bool fails() {
        const bool failing = at >= 0 && count++ == at;
        errno = failing ? reason : errno;
        return failing;
    }
};
thread_local Failure failure;

/// The C library's own function.
template <class Function>
Function* real(const char* name) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, name));
}

} // namespace

extern "C" {

int open(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    return failure.fails() ? -1 : real<decltype(::open)>("open")(path, flags, mode);
}
ssize_t write(int file, const void* bytes, size_t size) {
    return failure.fails() ? -1 : real<decltype(::write)>("write")(file, bytes, size);
}
ssize_t read(int file, void* into, size_t size) {
    return failure.fails() ? -1 : real<decltype(::read)>("read")(file, into, size);
}
int fsync(int file) {
    return failure.fails() ? -1 : real<decltype(::fsync)>("fsync")(file);
}
int close(int file) {
    const bool failing = failure.fails();
    const int reason = errno;
    const int answer = real<decltype(::close)>("close")(file);
    errno = failing ? reason : errno;
    return failing ? -1 : answer;
}
int rename(const char* from, const char* to) noexcept {
    return failure.fails() ? -1 : real<decltype(::rename)>("rename")(from, to);
}
int unlink(const char* path) noexcept {
    return failure.fails() ? -1 : real<decltype(::unlink)>("unlink")(path);
}
int stat(const char* path, struct stat* about) noexcept {
    return failure.fails() ? -1 : real<int(const char*, struct stat*)>("stat")(path, about);
}

} // extern "C"

namespace {

Circuit oneFuse() {
    return CircuitBuilder().part("fuse", "F1").build();
}

/// A document that was changed since it was saved.
class ChangedDocument {
public:
    explicit ChangedDocument(const std::string& path) : m_path(QString::fromStdString(path)) {
        document.startNew(oneFuse());
        REQUIRE(document.save(m_path));
        old = circuitText(document.circuit());
        Part part = document.circuit().parts.at({"F1"});
        part.at.x = 42;
        part.label = "in the box behind the seat";
        document.apply({"Move F1", {putPart({"F1"}, part)}});
        changed = circuitText(document.circuit());
    }

    Result<void> save() { return document.save(m_path); }

    void checkOpenAndModified() {
        CHECK(document.isModified());
        CHECK(document.path() == m_path);
        CHECK(circuitText(document.circuit()) == changed);
        CHECK(document.undoStack().undoText() == QStringLiteral("Move F1"));
    }

    Document document;
    std::string old;
    std::string changed;

private:
    QString m_path;
};

/// Saves with call `failing` failing; whether there was such a call.
bool savedWithFailure(int failing, int reason) {
    const TempFolder folder;
    ChangedDocument work((folder.path() / "van.pumpwright").string());
    failure = {failing, reason, 0};
    const Result<void> saved = work.save();
    const int calls = failure.count;
    failure = {};
    INFO("call " << failing << " of " << calls << " fails with " << reason);
    const std::string now = folder.read("van.pumpwright");
    CHECK((now == work.old || now == work.changed));
    CHECK((!folder.has("van.pumpwright~") || folder.read("van.pumpwright~") == work.old));
    if (saved) {
        CHECK(now == work.changed);
        CHECK(folder.has("van.pumpwright~"));
        CHECK_FALSE(work.document.isModified());
    } else {
        CHECK_THAT(saved.error().text, Catch::Contains("van.pumpwright") &&
                                           Catch::Contains(std::string(::strerrordesc_np(reason))));
        work.checkOpenAndModified();
        REQUIRE(work.save());
        CHECK(folder.read("van.pumpwright") == work.changed);
    }
    return failing < calls;
}

} // namespace

TEST_CASE(
    "whatever system call fails in a save, the circuit stays open and modified, and is saved the next time",
    "[document][save]") {
    for (const int reason : {ENOSPC, EIO, EACCES, EROFS, EINTR}) {
        int failing = 0;
        while (savedWithFailure(failing, reason)) {
            ++failing;
        }
        CHECK(failing > 15);
    }
}

TEST_CASE("a disk without room for the file is said to be, and nothing is cut off", "[document][save]") {
    const TempFolder folder;
    ChangedDocument work((folder.path() / "van.pumpwright").string());
    struct rlimit before {};
    REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
    std::signal(SIGXFSZ, SIG_IGN);
    const struct rlimit little {
        work.old.size() + 1, before.rlim_max
    }; // the backup fits, the new version does not
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &little) == 0);
    const Result<void> saved = work.save();
    REQUIRE(::setrlimit(RLIMIT_FSIZE, &before) == 0);
    REQUIRE_FALSE(saved);
    CHECK_THAT(saved.error().text,
               Catch::StartsWith("Not saved") && Catch::Contains(::strerrordesc_np(EFBIG)));
    CHECK(folder.read("van.pumpwright") == work.old);
    work.checkOpenAndModified();
}

TEST_CASE("a folder that has vanished is said to be, and the circuit can be saved elsewhere",
          "[document][save]") {
    const TempFolder folder;
    std::filesystem::create_directory(folder.path() / "stick");
    ChangedDocument work((folder.path() / "stick" / "van.pumpwright").string());
    std::filesystem::remove_all(folder.path() / "stick");
    const Result<void> saved = work.save();
    REQUIRE_FALSE(saved);
    CHECK_THAT(saved.error().text, Catch::StartsWith("Not saved") && Catch::Contains("stick") &&
                                       Catch::Contains(::strerrordesc_np(ENOENT)));
    work.checkOpenAndModified();
    REQUIRE(work.document.save(QString::fromStdString((folder.path() / "van.pumpwright").string())));
    CHECK(folder.read("van.pumpwright") == work.changed);
}
