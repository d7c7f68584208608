#include "tests/support/recorded_disk.h"

#include <fcntl.h>

#include <algorithm>
#include <filesystem>
#include <optional>

namespace pumpwright {
namespace {

std::string nameOf(const char* path) {
    return std::filesystem::path(path).filename().string();
}

/// What may have become of bytes that no sync confirmed.
enum class Fate { Lost, Half, Zeros, There };
constexpr int kFates = 4;

void writeDown(std::string& content, const std::string& bytes, Fate fate) {
    if (fate == Fate::There) {
        content += bytes;
    } else if (fate == Fate::Half) {
        content += bytes.substr(0, bytes.size() / 2);
    } else if (fate == Fate::Zeros) {
        content +=
            std::string(bytes.size(), '\0'); // the file's new length came to the disk, its bytes did not
    }
}

bool isName(const DiskStep& step) {
    return std::holds_alternative<NewName>(step) || std::holds_alternative<MovedName>(step) ||
           std::holds_alternative<GoneName>(step);
}

/// Whether a later sync, among those made, confirmed the step.
bool isConfirmed(const std::vector<DiskStep>& steps, std::size_t at, std::size_t count) {
    const auto* written = std::get_if<Written>(&steps[at]);
    for (std::size_t later = at + 1; later < count; ++later) {
        const auto* synced = std::get_if<FileSynced>(&steps[later]);
        if ((written && synced && synced->file == written->file) ||
            (isName(steps[at]) && std::holds_alternative<FolderSynced>(steps[later]))) {
            return true;
        }
    }
    return false;
}

/// The disk after the steps, each of which met the fate with its number; a name is lost or there.
class Disk {
public:
    explicit Disk(const FolderContent& before) {
        FileNumber number = -1;
        for (const auto& [name, content] : before) {
            m_names[name] = number;
            m_files[number--] = content;
        }
    }

    void make(const DiskStep& step, Fate fate) {
        if (const auto* written = std::get_if<Written>(&step)) {
            writeDown(m_files[written->file], written->bytes, fate);
        } else if (fate == Fate::There) {
            std::visit([this](const auto& made) { name(made); }, step);
        }
    }

    FolderContent content() const {
        FolderContent all;
        for (const auto& [name, file] : m_names) {
            const auto found = m_files.find(file);
            all[name] = found == m_files.end() ? std::string() : found->second;
        }
        return all;
    }

private:
    void name(const NewName& made) { m_names[made.name] = made.file; }
    void name(const MovedName& moved) {
        m_names.erase(moved.from);
        m_names[moved.to] = moved.file;
    }
    void name(const GoneName& gone) { m_names.erase(gone.name); }
    template <class Other>
    void name(const Other&) {}

    std::map<std::string, FileNumber> m_names;
    std::map<FileNumber, std::string> m_files;
};

} // namespace

int RecordedCalls::open(const char* path, int flags, mode_t mode) {
    const int file = FileCalls::open(path, flags, mode);
    if (file >= 0) {
        if ((flags & O_CREAT) != 0) {
            m_open[file] = m_names[nameOf(path)] = ++m_last;
            m_steps.emplace_back(NewName{nameOf(path), m_last});
        } else {
            m_open[file] = 0;
        }
    }
    return file;
}

ssize_t RecordedCalls::write(int file, const void* bytes, std::size_t size) {
    const ssize_t count = FileCalls::write(file, bytes, std::min(size, m_mostBytes));
    if (count > 0) {
        m_steps.emplace_back(Written{
            m_open.at(file), std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(count))});
    }
    return count;
}

int RecordedCalls::sync(int file) {
    const int answer = FileCalls::sync(file);
    if (answer == 0 && m_open.at(file) == 0) {
        m_steps.emplace_back(FolderSynced{});
    } else if (answer == 0) {
        m_steps.emplace_back(FileSynced{m_open.at(file)});
    }
    return answer;
}

int RecordedCalls::rename(const char* from, const char* to) {
    const int answer = FileCalls::rename(from, to);
    if (answer == 0) {
        m_names[nameOf(to)] = m_names.at(nameOf(from));
        m_names.erase(nameOf(from));
        m_steps.emplace_back(MovedName{nameOf(from), nameOf(to), m_names.at(nameOf(to))});
    }
    return answer;
}

int RecordedCalls::unlink(const char* path) {
    const int answer = FileCalls::unlink(path);
    if (answer == 0) {
        m_steps.emplace_back(GoneName{nameOf(path)});
    }
    return answer;
}

std::size_t forEachStateAfter(const FolderContent& before, const std::vector<DiskStep>& steps,
                              std::size_t count, const std::function<void(const FolderContent&)>& look) {
    std::vector<Fate> fates(count, Fate::There);
    std::vector<std::size_t> open;
    for (std::size_t at = 0; at < count; ++at) {
        if ((isName(steps[at]) || std::holds_alternative<Written>(steps[at])) &&
            !isConfirmed(steps, at, count)) {
            open.push_back(at);
            fates[at] = Fate::Lost;
        }
    }
    for (std::size_t states = 1;; ++states) {
        Disk disk(before);
        for (std::size_t at = 0; at < count; ++at) {
            disk.make(steps[at], fates[at]);
        }
        look(disk.content());
        // The next combination of fates, counted like digits.
        const auto next =
            std::find_if(open.begin(), open.end(), [&](std::size_t at) { return fates[at] != Fate::There; });
        std::for_each(open.begin(), next, [&](std::size_t at) { fates[at] = Fate::Lost; });
        if (next == open.end()) {
            return states;
        }
        const int step = isName(steps[*next]) ? kFates - 1 : 1;
        fates[*next] = static_cast<Fate>(static_cast<int>(fates[*next]) + step);
    }
}

} // namespace pumpwright
