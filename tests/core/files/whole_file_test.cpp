#include "core/files/circuit_file.h"
#include "core/files/whole_file.h"
#include "tests/support/catch.h"
#include "tests/support/circuit_builder.h"
#include "tests/support/temp_folder.h"

#include <fcntl.h>
#include <sys/stat.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <cstring>

using namespace pumpwright;

namespace {

enum class Failing { Once, FromThenOn };

/// Lets the call with a certain number fail, and those after it work again or fail as well.
class FailingCalls final : public FileCalls {
public:
    FailingCalls(int failing, int reason, Failing how = Failing::Once)
        : m_failing(failing), m_reason(reason), m_how(how) {}

    int count() const { return m_count; }
    bool failed() const { return m_count > m_failing; }

    int open(const char* path, int flags, mode_t mode) override {
        return fails() ? -1 : FileCalls::open(path, flags, mode);
    }
    ssize_t read(int file, void* into, std::size_t size) override {
        return fails() ? -1 : FileCalls::read(file, into, size);
    }
    ssize_t write(int file, const void* bytes, std::size_t size) override {
        return fails() ? -1 : FileCalls::write(file, bytes, size);
    }
    int sync(int file) override { return fails() ? -1 : FileCalls::sync(file); }
    int close(int file) override {
        const bool failing = fails();
        const int reason = errno;
        const int answer = FileCalls::close(file);
        errno = reason;
        return failing ? -1 : answer;
    }
    int rename(const char* from, const char* to) override {
        return fails() ? -1 : FileCalls::rename(from, to);
    }
    int unlink(const char* path) override { return fails() ? -1 : FileCalls::unlink(path); }
    int stat(const char* path, struct stat* about) override {
        return fails() ? -1 : FileCalls::stat(path, about);
    }

private:
    bool fails() {
        errno = m_reason;
        const int number = m_count++;
        return m_how == Failing::Once ? number == m_failing : number >= m_failing;
    }

    int m_failing;
    int m_reason;
    Failing m_how;
    int m_count = 0;
};

/// Writes a few bytes at a time, and is interrupted before each call.
class SlowCalls final : public FileCalls {
public:
    int open(const char* path, int flags, mode_t mode) override {
        return interrupted() ? -1 : FileCalls::open(path, flags, mode);
    }
    ssize_t write(int file, const void* bytes, std::size_t size) override {
        return interrupted() ? -1 : FileCalls::write(file, bytes, std::min<std::size_t>(size, 7));
    }
    ssize_t read(int file, void* into, std::size_t size) override {
        return interrupted() ? -1 : FileCalls::read(file, into, std::min<std::size_t>(size, 5));
    }
    int sync(int file) override { return interrupted() ? -1 : FileCalls::sync(file); }

private:
    bool interrupted() {
        m_interrupted = !m_interrupted;
        errno = EINTR;
        return m_interrupted;
    }
    bool m_interrupted = false;
};

const std::string kOld(1000, 'o');
const std::string kNew(1500, 'n');

void checkMessage(const Error& error, const std::filesystem::path& path, int reason, bool isOld) {
    CHECK(error.code == ErrorCode::FileUnwritable);
    CHECK(error.place.file.starts_with(path.string()));
    CHECK_THAT(error.text,
               Catch::Contains("a.pumpwright") && Catch::Contains(std::string(::strerrordesc_np(reason))));
    CHECK(error.text.starts_with(isOld ? "Not saved" : "Saved, but"));
}

/// Saves with every call failing in turn; returns how many there were.
int savesTried(int reason, Failing how) {
    for (int failing = 0;; ++failing) {
        INFO("call " << failing << " fails with " << reason);
        const TempFolder folder;
        const auto path = folder.write("a.pumpwright", kOld);
        FailingCalls calls(failing, reason, how);
        const auto saved = replaceFile(path, kNew, calls);
        if (!calls.failed()) {
            REQUIRE(saved);
            return failing;
        }
        const std::string now = folder.read("a.pumpwright");
        REQUIRE((now == kOld || now == kNew));
        CHECK((!folder.has("a.pumpwright~") || folder.read("a.pumpwright~") == kOld));
        if (how == Failing::Once) { // else the file beside it cannot be taken away either
            CHECK(folder.count() == 1U + (folder.has("a.pumpwright~") ? 1 : 0));
        }
        if (now == kOld) {
            REQUIRE_FALSE(saved);
        }
        if (!saved) {
            checkMessage(saved.error(), path, reason, now == kOld);
        }
    }
}

} // namespace

TEST_CASE("a new file is written and nothing else is left in the folder", "[files][save]") {
    const TempFolder folder;
    REQUIRE(replaceFile(folder.path() / "a.pumpwright", kNew));
    CHECK(folder.read("a.pumpwright") == kNew);
    CHECK(folder.count() == 1);
}

TEST_CASE("the version before is kept with a tilde, and only that one", "[files][save]") {
    const TempFolder folder;
    const auto path = folder.path() / "a.pumpwright";
    REQUIRE(replaceFile(path, "first"));
    REQUIRE(replaceFile(path, "second"));
    REQUIRE(replaceFile(path, "third"));
    CHECK(folder.read("a.pumpwright") == "third");
    CHECK(folder.read("a.pumpwright~") == "second");
    CHECK(folder.count() == 2);
}

TEST_CASE(
    "whatever call fails in a save, the file is the old or the new one, whole, and the message says why",
    "[files][save]") {
    for (const int reason : {ENOSPC, EIO, EACCES, EROFS, EINTR}) {
        CHECK(savesTried(reason, Failing::Once) >= 14);
    }
}

TEST_CASE("a disk that fails from some call on leaves the old file or the new one, whole", "[files][save]") {
    for (const int reason : {ENOSPC, EIO, EACCES, EROFS}) {
        CHECK(savesTried(reason, Failing::FromThenOn) >= 14);
    }
}

TEST_CASE("a new file whose save fails leaves nothing behind", "[files][save]") {
    for (int failing = 0;; ++failing) {
        INFO("call " << failing);
        const TempFolder folder;
        FailingCalls calls(failing, ENOSPC);
        const auto saved = replaceFile(folder.path() / "a.pumpwright", kNew, calls);
        if (!calls.failed()) {
            CHECK(failing >= 6);
            break;
        }
        CHECK((folder.count() == 0 || folder.read("a.pumpwright") == kNew));
    }
}

TEST_CASE("interrupted calls and short writes are taken up again", "[files][save]") {
    const TempFolder folder;
    const auto path = folder.write("a.pumpwright", kOld);
    SlowCalls calls;
    REQUIRE(replaceFile(path, kNew, calls));
    CHECK(folder.read("a.pumpwright") == kNew);
    CHECK(folder.read("a.pumpwright~") == kOld);
}

TEST_CASE("a link stays a link: the file that it leads to is replaced", "[files][save]") {
    const TempFolder folder;
    const auto target = folder.write("real.pumpwright", kOld);
    std::filesystem::create_symlink(target, folder.path() / "link.pumpwright");
    REQUIRE(replaceFile(folder.path() / "link.pumpwright", kNew));
    CHECK(std::filesystem::is_symlink(folder.path() / "link.pumpwright"));
    CHECK(folder.read("real.pumpwright") == kNew);
}

TEST_CASE("a file keeps who may read it", "[files][save]") {
    const TempFolder folder;
    const auto path = folder.write("a.pumpwright", kOld);
    REQUIRE(::chmod(path.c_str(), 0600) == 0);
    REQUIRE(replaceFile(path, kNew));
    struct stat about {};
    REQUIRE(::stat(path.c_str(), &about) == 0);
    CHECK((about.st_mode & 0777U) == 0600U);
}

TEST_CASE("a name without a folder is a file in the current one", "[files][save]") {
    const TempFolder folder;
    const auto before = std::filesystem::current_path();
    std::filesystem::current_path(folder.path());
    const auto saved = replaceFile("plain.pumpwright", kNew);
    const auto read = fileText("plain.pumpwright", 10'000);
    std::filesystem::current_path(before);
    REQUIRE(saved);
    CHECK(read == kNew);
    CHECK(folder.count() == 1);
}

TEST_CASE("what is no file cannot be saved to or read", "[files][save]") {
    const TempFolder folder;
    CHECK(replaceFile(folder.path(), kNew).error().code == ErrorCode::FileUnwritable);
    CHECK(replaceFile(folder.path() / "none" / "a.pumpwright", kNew).error().code ==
          ErrorCode::FileUnwritable);
    CHECK_THAT(fileText(folder.path(), 10).error().text, Catch::Contains("it is a folder"));
    CHECK(fileText(folder.path() / "a.pumpwright", 10).error().code == ErrorCode::FileUnreadable);
    CHECK(fileText("/dev/zero", 10).error().code == ErrorCode::FileUnreadable);
    const auto pipe = folder.path() / "pipe";
    REQUIRE(::mkfifo(pipe.c_str(), 0600) == 0);
    CHECK(fileText(pipe, 10).error().code == ErrorCode::FileUnreadable);
}

TEST_CASE("a file is read up to its limit and no further", "[files][save]") {
    const TempFolder folder;
    CHECK(fileText(folder.write("a", "123456789"), 10) == "123456789");
    CHECK(fileText(folder.write("b", "1234567890"), 10) == "1234567890");
    CHECK(fileText(folder.write("c", "12345678901"), 10).error().code == ErrorCode::TooLarge);
    CHECK(readCircuit(folder.write("d", std::string(9U << 20U, ' '))).error().code == ErrorCode::TooLarge);
}

TEST_CASE("a circuit is saved and opened again", "[files][save]") {
    const TempFolder folder;
    const Circuit circuit =
        CircuitBuilder().part("relay", "K1").part("lamp", "P1").wire("K1.87", "P1.1").build();
    REQUIRE(writeCircuit(circuit, folder.path() / "a.pumpwright"));
    const auto again = readCircuit(folder.path() / "a.pumpwright");
    REQUIRE(again);
    CHECK(*again == circuit);
}

TEST_CASE("what could not be opened again is not saved, and the old file stays", "[files][save]") {
    const TempFolder folder;
    const Circuit good =
        CircuitBuilder().part("relay", "K1").part("lamp", "P1").wire("K1.87", "P1.1").build();
    const auto path = folder.path() / "a.pumpwright";
    REQUIRE(writeCircuit(good, path));
    const std::string before = folder.read("a.pumpwright");

    Circuit dangling = good;
    dangling.parts.erase({"P1"});
    Circuit notANumber = good;
    notANumber.wires.at({"w1"}).length_m = std::nan("");
    Circuit longText = good;
    longText.title.title = std::string(5000, 'x');
    for (const Circuit& bad : {dangling, notANumber, longText}) {
        const auto saved = writeCircuit(bad, path);
        REQUIRE_FALSE(saved);
        CHECK_THAT(saved.error().text, Catch::StartsWith("Not saved"));
        CHECK(saved.error().place.file.starts_with(path.string()));
        CHECK(folder.read("a.pumpwright") == before);
        CHECK(folder.count() == 1);
    }
}

TEST_CASE("text that is no UTF-8 is saved with replacement characters rather than not at all",
          "[files][save]") {
    const TempFolder folder;
    Circuit circuit;
    circuit.title.title = "caf\xE9";
    REQUIRE(writeCircuit(circuit, folder.path() / "a.pumpwright"));
    CHECK(readCircuit(folder.path() / "a.pumpwright")->title.title == "caf\uFFFD");
}
