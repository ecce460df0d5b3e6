package packs
