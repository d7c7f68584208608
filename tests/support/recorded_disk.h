#pragma once

#include "core/files/whole_file.h"

#include <functional>
#include <map>
#include <string>
#include <variant>
#include <vector>

namespace pumpwright {

// What a disk may hold after the power went, told from the calls that were made until then. After Pillai et
// al., "All File Systems Are Not Created Equal", OSDI 2014, section 3: what a sync confirmed is there; of all
// else any part may be, in any order.

using FileNumber = int;

// One step of a save, as the disk sees it.
struct NewName {
    std::string name;
    FileNumber file;
};
struct MovedName {
    std::string from;
    std::string to;
    FileNumber file;
};
struct GoneName {
    std::string name;
};
struct Written {
    FileNumber file;
    std::string bytes;
};
struct FileSynced {
    FileNumber file;
};
struct FolderSynced {};
using DiskStep = std::variant<NewName, MovedName, GoneName, Written, FileSynced, FolderSynced>;

/// Names and contents of the files of one folder.
using FolderContent = std::map<std::string, std::string>;

/// Makes the calls and writes down what the disk sees of them. All must lie in one folder.
class RecordedCalls final : public FileCalls {
public:
    /// Writes at most `mostBytes` in a call.
    explicit RecordedCalls(std::size_t mostBytes) : m_mostBytes(mostBytes) {}

    const std::vector<DiskStep>& steps() const { return m_steps; }

    int open(const char* path, int flags, mode_t mode) override;
    ssize_t write(int file, const void* bytes, std::size_t size) override;
    int sync(int file) override;
    int rename(const char* from, const char* to) override;
    int unlink(const char* path) override;

private:
    std::size_t m_mostBytes;
    std::vector<DiskStep> m_steps;
    std::map<int, FileNumber> m_open; ///< by descriptor; 0 is the folder
    std::map<std::string, FileNumber> m_names;
    FileNumber m_last = 0;
};

/// Calls `look` with everything that the disk may hold when the power goes after the first `count` steps.
/// Returns how many states that were.
std::size_t forEachStateAfter(const FolderContent& before, const std::vector<DiskStep>& steps,
                              std::size_t count, const std::function<void(const FolderContent&)>& look);

} // namespace pumpwright
