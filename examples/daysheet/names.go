package main

import (
	"encoding/binary"
	"hash/maphash"
)

// nameSet remembers names and the line that each was first seen on. It keeps
// the names themselves, so that two animals are never taken for one because
// their hashes agree. Names of 64 bytes cost less than 100 bytes each.
// The zero value is an empty set.
type nameSet struct {
	seed   maphash.Seed
	slots  []slot   // open addressing; as many as a power of two
	chunks [][]byte // entries: length of the name, line, name
	end    uint64   // offset of the next entry
	count  int
}

// slot points at an entry. The hash spares looking at most entries that are
// not the one looked for; it never decides that a name is there.
type slot struct {
	hash uint32
	at   uint32 // 1 + the offset of the entry; 0: empty
}

const (
	chunkBits  = 16 // chunks of 64 KiB: a short file costs little, and no chunk is ever copied
	chunkSize  = 1 << chunkBits
	maxChunks  = 1 << (32 - chunkBits) // what an offset of 32 bits reaches
	entryHead  = 1 + 4
	firstSlots = 64
)

// add remembers name as seen on line, and returns 0. When the name was there
// already it returns the earlier line and changes nothing. It returns -1 when
// the set can hold no more names, at about 60 million. The name is at most
// 255 bytes long; lines count from 1.
func (s *nameSet) add(name []byte, line int) int {
	// Up to four of five slots are taken: with the old slots that are still
	// there while it grows, a name then costs 64 + 5 + 30 bytes at most.
	if 5*(s.count+1) > 4*len(s.slots) {
		s.grow()
	}
	hash := uint32(maphash.Bytes(s.seed, name))
	i := s.home(hash)
	for s.slots[i].at != 0 {
		if at := s.slots[i].at - 1; s.slots[i].hash == hash && string(s.name(at)) == string(name) {
			return s.line(at)
		}
		i = s.after(i)
	}
	at, ok := s.store(name, line)
	if !ok {
		return -1
	}
	s.slots[i] = slot{hash, at + 1}
	s.count++
	return 0
}

// home returns the slot where the search for a hash begins, after the one
// where it goes on.
func (s *nameSet) home(hash uint32) uint32 { return hash & uint32(len(s.slots)-1) }
func (s *nameSet) after(i uint32) uint32   { return (i + 1) & uint32(len(s.slots)-1) }

func (s *nameSet) grow() {
	if s.slots == nil {
		s.seed = maphash.MakeSeed()
	}
	old := s.slots
	s.slots = make([]slot, max(firstSlots, 2*len(old)))
	for _, o := range old {
		if o.at == 0 {
			continue
		}
		i := s.home(o.hash)
		for s.slots[i].at != 0 {
			i = s.after(i)
		}
		s.slots[i] = o
	}
}

func (s *nameSet) store(name []byte, line int) (at uint32, ok bool) {
	size := uint64(entryHead + len(name))
	if room := uint64(len(s.chunks)) << chunkBits; s.end+size > room {
		if len(s.chunks) == maxChunks {
			return 0, false
		}
		s.end = room
		s.chunks = append(s.chunks, make([]byte, chunkSize))
	}
	at = uint32(s.end)
	e := s.entry(at)
	e[0] = byte(len(name))
	binary.LittleEndian.PutUint32(e[1:], uint32(line))
	copy(e[entryHead:], name)
	s.end += size
	return at, true
}

func (s *nameSet) entry(at uint32) []byte {
	return s.chunks[at>>chunkBits][at&(chunkSize-1):]
}

func (s *nameSet) name(at uint32) []byte {
	e := s.entry(at)
	return e[entryHead : entryHead+int(e[0])]
}

func (s *nameSet) line(at uint32) int {
	return int(binary.LittleEndian.Uint32(s.entry(at)[1:]))
}
