#include "core/files/whole_file.h"

#include "core/units/quoted_text.h"

#include <fcntl.h>
#include <fmt/core.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <functional>
#include <optional>
#include <system_error>

namespace pumpwright {

int FileCalls::open(const char* path, int flags, mode_t mode) {
    return ::open(path, flags, mode);
}
ssize_t FileCalls::read(int file, void* into, std::size_t size) {
    return ::read(file, into, size);
}
ssize_t FileCalls::write(int file, const void* bytes, std::size_t size) {
    return ::write(file, bytes, size);
}
int FileCalls::sync(int file) {
    return ::fsync(file);
}
int FileCalls::close(int file) {
    return ::close(file);
}
int FileCalls::rename(const char* from, const char* to) {
    return ::rename(from, to);
}
int FileCalls::unlink(const char* path) {
    return ::unlink(path);
}
int FileCalls::stat(const char* path, struct stat* about) {
    return ::stat(path, about);
}

namespace {

/// In English whatever the locale is, as all messages of core: strerror() and std::generic_category() follow
/// it.
std::string reason(int number) {
    const char* text = ::strerrordesc_np(number);
    return text ? text : fmt::format("error {}", number);
}

Error unreadable(const std::filesystem::path& path, const std::string& why) {
    return {ErrorCode::FileUnreadable,
            fmt::format("The file {} cannot be read: {}.", quotedText(path.string()), why),
            {path.string(), 0, {}}};
}

Error unwritable(const std::filesystem::path& path, std::string_view what, int number) {
    return {ErrorCode::FileUnwritable,
            fmt::format("{} {}: {}.", what, quotedText(path.string()), reason(number)),
            {path.string(), 0, {}}};
}

/// Again, as long as a signal came between.
template <class Call>
auto persistent(Call call) {
    auto answer = call();
    while (answer == -1 && errno == EINTR) {
        answer = call();
    }
    return answer;
}

/// An open file that is closed with its owner, at the latest.
class OpenFile {
public:
    OpenFile(FileCalls& calls, const std::filesystem::path& path, int flags, mode_t mode = 0)
        : m_calls(calls),
          m_number(persistent([&] { return calls.open(path.c_str(), flags | O_CLOEXEC, mode); })) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() { close(); }

    bool isOpen() const { return m_number >= 0; }
    int number() const { return m_number; }
    bool close() {
        if (!isOpen()) {
            return true;
        }
        // Linux closes the file even where close() was interrupted: calling again could close somebody
        // else's.
        const bool good = m_calls.close(m_number) == 0 || errno == EINTR;
        m_number = -1;
        return good;
    }

private:
    FileCalls& m_calls;
    int m_number;
};

/// The file beside `path` under which new content grows. Taken away again unless it got its real name.
class SideFile {
public:
    SideFile(FileCalls& calls, const std::filesystem::path& path, mode_t mode)
        : m_calls(calls),
          m_path(path.parent_path() / fmt::format(".{}.{}", path.filename().string(), ::getpid())) {
        calls.unlink(m_path.c_str()); // left behind by a process of the same number that was killed
        m_file.emplace(calls, m_path, O_WRONLY | O_CREAT | O_EXCL, mode);
        m_created = m_file->isOpen();
    }
    SideFile(const SideFile&) = delete;
    SideFile& operator=(const SideFile&) = delete;
    ~SideFile() {
        if (m_created && !m_named) {
            m_file->close();
            m_calls.unlink(m_path.c_str());
        }
    }

    bool isOpen() const { return m_file->isOpen(); }

    bool write(std::string_view bytes) {
        while (!bytes.empty()) {
            const ssize_t written =
                persistent([&] { return m_calls.write(m_file->number(), bytes.data(), bytes.size()); });
            if (written <= 0) {
                errno = written == 0 ? ENOSPC : errno;
                return false;
            }
            bytes.remove_prefix(static_cast<std::size_t>(written));
        }
        return true;
    }

    bool finish() {
        return persistent([&] { return m_calls.sync(m_file->number()); }) == 0 && m_file->close();
    }

    bool nameAs(const std::filesystem::path& path) {
        m_named = m_calls.rename(m_path.c_str(), path.c_str()) == 0;
        return m_named;
    }

private:
    FileCalls& m_calls;
    std::filesystem::path m_path;
    std::optional<OpenFile> m_file;
    bool m_created = false;
    bool m_named = false;
};

/// Lets `writeContent` fill a file beside `path`, which then takes its place.
Result<void> replaceWith(const std::filesystem::path& path, mode_t mode, FileCalls& calls,
                         std::string_view what, const std::function<bool(SideFile&)>& writeContent) {
    SideFile side(calls, path, mode);
    if (!side.isOpen() || !writeContent(side) || !side.finish() || !side.nameAs(path)) {
        return tl::unexpected(unwritable(path, what, errno));
    }
    return {};
}

bool copyContent(OpenFile& from, SideFile& to, FileCalls& calls) {
    std::array<char, 65'536> bytes{};
    for (;;) {
        const ssize_t count =
            persistent([&] { return calls.read(from.number(), bytes.data(), bytes.size()); });
        if (count <= 0) {
            return count == 0;
        }
        if (!to.write({bytes.data(), static_cast<std::size_t>(count)})) {
            return false;
        }
    }
}

/// Keeps what the file holds now under its name with "~" added.
Result<void> keepPrevious(const std::filesystem::path& path, mode_t mode, FileCalls& calls) {
    OpenFile previous(calls, path, O_RDONLY);
    if (!previous.isOpen()) {
        return tl::unexpected(
            unwritable(path, "Not saved, because the previous version cannot be kept:", errno));
    }
    std::filesystem::path kept = path;
    kept += "~";
    return replaceWith(kept, mode, calls, "Not saved, because the previous version cannot be kept as",
                       [&](SideFile& side) { return copyContent(previous, side, calls); });
}

/// Without this the new name itself could be lost with the power. Not every file system has it (EINVAL).
Result<void> syncFolder(const std::filesystem::path& path, FileCalls& calls) {
    OpenFile folder(calls, path.parent_path(), O_RDONLY | O_DIRECTORY);
    if (!folder.isOpen() ||
        (persistent([&] { return calls.sync(folder.number()); }) != 0 && errno != EINVAL)) {
        return tl::unexpected(unwritable(path, "Saved, but the disk did not confirm it; save again:", errno));
    }
    return {};
}

/// The absolute path of the file itself where `path` is a link to it.
Result<std::filesystem::path> realPath(const std::filesystem::path& path) {
    std::error_code failed;
    const std::filesystem::path absolute = std::filesystem::absolute(path, failed);
    if (!failed) {
        std::filesystem::path canonical = std::filesystem::weakly_canonical(absolute, failed);
        if (!failed) {
            return canonical;
        }
    }
    return tl::unexpected(unwritable(path, "Not saved, because this cannot be reached:", failed.value()));
}

Result<void> replaceRealFile(const std::filesystem::path& target, std::string_view text, FileCalls& calls) {
    struct stat about {};
    mode_t mode = 0666;
    if (calls.stat(target.c_str(), &about) == 0) {
        if (!S_ISREG(about.st_mode)) {
            return tl::unexpected(unwritable(target, "Not saved, because this is no file:", EISDIR));
        }
        mode = about.st_mode & 0777U;
        if (const auto kept = keepPrevious(target, mode, calls); !kept) {
            return kept;
        }
    } else if (errno != ENOENT) { // it may be there: writing without keeping it would lose it
        return tl::unexpected(unwritable(target, "Not saved, because this cannot be reached:", errno));
    }
    const auto replaced = replaceWith(target, mode, calls, "Not saved, because this cannot be written:",
                                      [&](SideFile& side) { return side.write(text); });
    return replaced ? syncFolder(target, calls) : replaced;
}

class FileBlocks : public TextBlocks {
public:
    FileBlocks(const std::filesystem::path& path, std::size_t mostBytes)
        : m_path(path), m_mostBytes(mostBytes), m_file(m_calls, path, O_RDONLY | O_NONBLOCK) {
    } // a pipe without a writer must not stop us here

    /// Why it is not to be read, if so.
    std::optional<Error> fault() const {
        struct stat about {};
        if (!m_file.isOpen() || ::fstat(m_file.number(), &about) != 0) {
            return unreadable(m_path, reason(errno));
        }
        if (!S_ISREG(about.st_mode)) {
            return unreadable(m_path, S_ISDIR(about.st_mode) ? "it is a folder" : "it is no regular file");
        }
        return std::nullopt;
    }

    Result<std::string_view> next() override {
        const ssize_t count =
            persistent([&] { return m_calls.read(m_file.number(), m_bytes.data(), m_bytes.size()); });
        if (count < 0) {
            return tl::unexpected(unreadable(m_path, reason(errno)));
        }
        m_read += static_cast<std::size_t>(count);
        if (m_read > m_mostBytes) {
            return tl::unexpected(
                Error{ErrorCode::TooLarge,
                      fmt::format("The file {} is larger than {} MiB, the most that is read.",
                                  quotedText(m_path.string()), m_mostBytes >> 20U),
                      {m_path.string(), 0, {}}});
        }
        return std::string_view(m_bytes.data(), static_cast<std::size_t>(count));
    }

private:
    FileCalls m_calls;
    std::filesystem::path m_path;
    std::size_t m_mostBytes;
    OpenFile m_file;
    std::size_t m_read = 0;
    std::array<char, kBlockBytes> m_bytes{};
};

} // namespace

Result<std::unique_ptr<TextBlocks>> fileBlocks(const std::filesystem::path& path, std::size_t mostBytes) {
    auto blocks = std::make_unique<FileBlocks>(path, mostBytes);
    if (std::optional<Error> fault = blocks->fault()) {
        return tl::unexpected(std::move(*fault));
    }
    return blocks;
}

Result<std::string> fileText(const std::filesystem::path& path, std::size_t mostBytes) {
    const auto blocks = fileBlocks(path, mostBytes);
    if (!blocks) {
        return tl::unexpected(blocks.error());
    }
    std::string text;
    for (;;) {
        const Result<std::string_view> block = (*blocks)->next();
        if (!block) {
            return tl::unexpected(block.error());
        }
        if (block->empty()) {
            return text;
        }
        text += *block;
    }
}

Result<void> replaceFile(const std::filesystem::path& path, std::string_view text) {
    FileCalls calls;
    return replaceFile(path, text, calls);
}

Result<void> replaceFile(const std::filesystem::path& path, std::string_view text, FileCalls& calls) {
    return realPath(path).and_then(
        [&](const std::filesystem::path& target) { return replaceRealFile(target, text, calls); });
}

} // namespace pumpwright
