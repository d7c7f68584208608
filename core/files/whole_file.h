#pragma once

#include "core/files/text_blocks.h"
#include "core/units/result.h"

#include <sys/stat.h>
#include <sys/types.h>

#include <cstddef>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

namespace pumpwright {

/// The system calls of a save, so that a test can let each of them fail. Each answers as the call of its
/// name.
class FileCalls {
public:
    virtual ~FileCalls() = default;
    virtual int open(const char* path, int flags, mode_t mode);
    virtual ssize_t read(int file, void* into, std::size_t size);
    virtual ssize_t write(int file, const void* bytes, std::size_t size);
    virtual int sync(int file);
    virtual int close(int file);
    virtual int rename(const char* from, const char* to);
    virtual int unlink(const char* path);
    virtual int stat(const char* path, struct stat* about);
};

/// A regular file of at most `mostBytes`, piece by piece.
[[nodiscard]] Result<std::unique_ptr<TextBlocks>> fileBlocks(const std::filesystem::path& path,
                                                             std::size_t mostBytes);

/// The bytes of a regular file of at most `mostBytes`.
[[nodiscard]] Result<std::string> fileText(const std::filesystem::path& path, std::size_t mostBytes);

/// Replaces the file's content. It is the old or the new one, whole, whatever fails in between: what is new
/// is written beside it, synced, and given its name. The old content is kept under the name with "~" added.
[[nodiscard]] Result<void> replaceFile(const std::filesystem::path& path, std::string_view text);
[[nodiscard]] Result<void> replaceFile(const std::filesystem::path& path, std::string_view text,
                                       FileCalls& calls);

} // namespace pumpwright
