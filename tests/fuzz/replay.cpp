// Drives a fuzz target without libFuzzer: the seeds as they are, then copies changed at random by a fixed
// seed.

#include <charconv>
#include <csignal>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

constexpr std::uint64_t kSeed = 20260120;

/// What the target is looking at, so that a crash can be told from its input.
std::vector<std::uint8_t> currentInput;

extern "C" void printInput(int signal) {
    std::fputs("input:", stderr);
    for (const std::uint8_t byte : currentInput) {
        std::fprintf(stderr, " %02x", static_cast<unsigned>(byte));
    }
    std::fputc('\n', stderr);
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

class Mutations {
public:
    explicit Mutations(const std::vector<std::string>& seeds) : m_seeds(seeds) {}

    std::string next() {
        std::string text = m_seeds[below(m_seeds.size())];
        for (std::size_t changes = 1 + below(4); changes > 0; --changes) {
            change(text);
        }
        return text;
    }

private:
    std::size_t below(std::size_t limit) { return m_engine() % limit; }

    void change(std::string& text) {
        const std::size_t at = below(text.size() + 1);
        const char byte = static_cast<char>(below(256));
        switch (below(5)) {
        case 0:
            text.insert(at, 1, byte);
            break;
        case 1:
            text.erase(at, 1 + below(3));
            break;
        case 2:
            text += m_seeds[below(m_seeds.size())];
            break;
        case 3:
            text.insert(at, text.substr(0, below(8)));
            break;
        default:
            if (at < text.size()) {
                text[at] = byte;
            }
        }
    }

    std::mt19937_64 m_engine{kSeed};
    const std::vector<std::string>& m_seeds;
};

void runTarget(const std::string& text) {
    currentInput.assign(text.begin(), text.end());
    LLVMFuzzerTestOneInput(currentInput.data(), currentInput.size());
}

std::string bytesOf(std::string_view hex) {
    std::string bytes;
    for (; hex.size() >= 2; hex.remove_prefix(2)) {
        unsigned char byte = 0;
        std::from_chars(hex.data(), hex.data() + 2, byte, 16);
        bytes += static_cast<char>(byte);
    }
    return bytes;
}

/// A .txt file has a seed on each line, a .hex file the bytes of one as hexadecimal digits; any other file is
/// one seed.
void addSeeds(const std::filesystem::path& path, std::vector<std::string>& seeds) {
    std::ifstream file(path, std::ios::binary);
    if (path.extension() == ".txt" || path.extension() == ".hex") {
        for (std::string line; std::getline(file, line);) {
            seeds.push_back(path.extension() == ".hex" ? bytesOf(line) : line);
        }
    } else {
        std::ostringstream text;
        text << file.rdbuf();
        seeds.push_back(text.str());
    }
}

} // namespace

int main(int argc, char** argv) {
    const std::string_view rounds = argc > 2 ? argv[1] : "";
    std::size_t count = 0;
    std::from_chars(rounds.data(), rounds.data() + rounds.size(), count);
    std::vector<std::string> seeds;
    for (int i = 2; i < argc; ++i) {
        addSeeds(argv[i], seeds);
    }
    if (seeds.empty() || count == 0) {
        std::fputs("usage: replay ROUNDS SEEDS..., a .txt or .hex with a seed on each line, other files as "
                   "they are\n",
                   stderr);
        return 2;
    }
    std::signal(SIGABRT, printInput);
    for (const std::string& seed : seeds) {
        runTarget(seed);
    }
    Mutations mutations(seeds);
    for (std::size_t i = 0; i < count; ++i) {
        runTarget(mutations.next());
    }
    std::printf("%zu seeds and %zu changed copies, random seed %llu\n", seeds.size(), count,
                static_cast<unsigned long long>(kSeed));
    return 0;
}
